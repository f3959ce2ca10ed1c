import { npvId, type RangeMethod, type Spread } from '../../src/index.ts';

const fallback = 'difference.total';

/** Results whose turning is looked for: differences of the two routes, and what a plan to change from one to the other is worth. */
const resultsUnderTest = [fallback, 'difference.withoutPolicy', 'difference.footprint.total', npvId] as const;
export type ResultUnderTest = (typeof resultsUnderTest)[number];

/** Results that the case has: a present value only where it has an investment plan. */
export function resultsOffered(capital: Spread['capital'] | undefined): readonly ResultUnderTest[] {
  return resultsUnderTest.filter((result) => result !== npvId || capital === 'in the plan');
}

/** The result that was asked for last, or the cost of a tonne where the case does not have it. */
export function resultInForce(asked: ResultUnderTest, capital: Spread['capital'] | undefined): ResultUnderTest {
  return resultsOffered(capital).includes(asked) ? asked : fallback;
}

/** Numbers of columns and rows a table can have; few enough to read come first. */
export const tableSizes = [
  { columns: 7, rows: 9 },
  { columns: 21, rows: 21 },
  { columns: 51, rows: 51 },
  { columns: 101, rows: 101 },
] as const;

/** What is asked on the page of what-ifs. It is kept while other pages are read. */
export class WhatIfPlace {
  result = $state.raw<ResultUnderTest>(fallback);
  method = $state.raw<RangeMethod>('usual range');
  /** Share of the figure either way, where every input is moved by the same. */
  share = $state.raw(0.2);
  /** Inputs of the table; "" for those that move the result most. */
  across = $state.raw('');
  down = $state.raw('');
  size = $state.raw<(typeof tableSizes)[number]>(tableSizes[0]);
  lower = $state.raw<'ties' | 'scenarios' | 'limits'>('ties');
  spread = $state.raw<'picture' | 'drivers' | 'settling' | 'drawn'>('picture');
  /** Scenarios: only inputs that some scenario has otherwise. */
  onlyDifferent = $state.raw(true);
}
