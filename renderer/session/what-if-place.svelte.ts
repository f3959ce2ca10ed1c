import type { RangeMethod } from '../../src/index.ts';

/** Results whose turning is looked for, all of them differences of the two routes. */
export const resultsUnderTest = ['difference.total', 'difference.withoutPolicy', 'difference.footprint.total'] as const;
export type ResultUnderTest = (typeof resultsUnderTest)[number];

/** Numbers of columns and rows a table can have; few enough to read come first. */
export const tableSizes = [
  { columns: 7, rows: 9 },
  { columns: 21, rows: 21 },
  { columns: 51, rows: 51 },
  { columns: 101, rows: 101 },
] as const;

/** What is asked on the page of what-ifs. It is kept while other pages are read. */
export class WhatIfPlace {
  result = $state.raw<ResultUnderTest>('difference.total');
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
