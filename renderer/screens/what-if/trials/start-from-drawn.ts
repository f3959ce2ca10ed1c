import type { GivenDistribution, TrialSummary, Uncertainty } from '../../../../src/index.ts';

/**
 * The usual ranges that were drawn, as a case says them, so that the same trials come of it. Most likely figures are left out: they stay
 * those in force when a price changes. Years are given apart, since trials in which nothing changes from year to year tell of one only.
 */
export function startFromDrawn({ trials, seed, drawn }: TrialSummary, years: number): Uncertainty {
  const inputs = drawn.flatMap(({ id, distribution }): readonly [string, GivenDistribution][] =>
    'mode' in distribution
      ? [[id, { law: distribution.kind, low: String(distribution.low), high: String(distribution.high) }]]
      : [],
  );
  return { trials, seed, years, inputs: Object.fromEntries(inputs) };
}
