import fc from 'fast-check';
import type { Distribution } from '../../../src/kernel/random/distribution.ts';

const figure = fc.integer({ min: -1_000_000, max: 1_000_000 }).map((thousandths) => thousandths / 1000);
const positive = fc.double({ min: 0.1, max: 1000, noNaN: true });
const share = fc.double({ min: 0, max: 1, noNaN: true });
const bound = fc.double({ min: 0, max: 4, noNaN: true });

/** Distributions of every kind; bounds lie up to four deviations on either side of the mean, or nowhere. */
export const randomDistribution: fc.Arbitrary<Distribution> = fc.oneof(
  fc
    .record({ low: figure, width: positive })
    .map(({ low, width }) => ({ kind: 'uniform' as const, low, high: low + width })),
  fc
    .record({ kind: fc.constantFrom('triangular' as const, 'PERT' as const), low: figure, width: positive, share })
    .map(({ kind, low, width, share }) => ({ kind, low, mode: low + share * width, high: low + width })),
  fc
    .record({ mean: figure, deviation: positive, below: fc.option(bound), above: fc.option(bound) })
    .map(({ mean, deviation, below, above }) => ({
      kind: 'normal' as const,
      mean,
      deviation,
      low: below === null ? -Infinity : mean - (below + 0.01) * deviation,
      high: above === null ? Infinity : mean + above * deviation,
    })),
  fc
    .record({
      mean: positive,
      spread: fc.double({ min: 0.01, max: 2, noNaN: true }),
      below: fc.option(share),
      above: fc.option(bound),
    })
    .map(({ mean, spread, below, above }) => ({
      kind: 'lognormal' as const,
      mean,
      deviation: mean * spread,
      low: below === null ? 0 : below * 0.9 * mean,
      high: above === null ? Infinity : mean * (1 + above),
    })),
  fc
    .array(fc.record({ value: figure, weight: positive }), { minLength: 1, maxLength: 6 })
    .map((values) => ({ kind: 'discrete' as const, values })),
);

/** The least and greatest value that can be drawn. */
export function boundsOf(distribution: Distribution): [low: number, high: number] {
  if (distribution.kind !== 'discrete') return [distribution.low, distribution.high];
  const values = distribution.values.map(({ value }) => value);
  return [Math.min(...values), Math.max(...values)];
}
