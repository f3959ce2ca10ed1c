import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { percentiles } from '../../../src/kernel/random/percentiles.ts';

/** The rule itself on values in order. */
function sorted(values: Float64Array, shares: readonly number[]): number[] {
  const rising = values.toSorted();
  return shares.map((share) => {
    const place = (values.length - 1) * share;
    const below = Math.floor(place);
    if (place === below) return rising[below]!;
    return rising[below]! + (place - below) * (rising[below + 1]! - rising[below]!);
  });
}

const shares = fc.array(fc.oneof(fc.constantFrom(0, 0.5, 1), fc.double({ min: 0, max: 1, noNaN: true })), {
  maxLength: 8,
});

describe('percentiles', () => {
  it('are those of the values in order, many of them equal or not', () => {
    const distinct = fc.double({ min: -1e6, max: 1e6, noNaN: true });
    const repeated = fc.integer({ min: 0, max: 3 });
    const arrays = fc.oneof(
      fc.array(distinct, { minLength: 1, maxLength: 400, size: 'max' }),
      fc.array(repeated, { minLength: 1, maxLength: 400, size: 'max' }),
    );
    fc.assert(
      fc.property(arrays, shares, (values, wanted) => {
        const given = Float64Array.from(values);
        expect(percentiles(given, wanted)).toEqual(sorted(given, wanted));
        expect(given).toEqual(Float64Array.from(values));
      }),
      { numRuns: 200 },
    );
  });

  // A choice of pivots that met these badly would need a pass for every value: 20,000 passes of 20,000 values take longer than any test may.
  it.each([
    ['rising', (k: number) => k],
    ['falling', (k: number) => -k],
    ['all equal', () => 4],
    ['two kinds', (k: number) => k % 2],
    ['up and down', (k: number) => Math.min(k, 20_000 - k)],
    ['a saw', (k: number) => k % 137],
    ['a few outliers', (k: number) => (k % 5000 === 0 ? 1e9 : 0)],
  ])('are found in values that are %s', (_, value) => {
    const values = Float64Array.from({ length: 20_000 }, (__, k) => value(k));
    const wanted = [0, 0.05, 0.1, 0.5, 0.9, 0.95, 1];
    expect(percentiles(values, wanted)).toEqual(sorted(values, wanted));
  });

  it('reach from the least to the greatest, also of a single value', () => {
    expect(percentiles(Float64Array.of(5, -2, 9), [0, 1])).toEqual([-2, 9]);
    expect(percentiles(Float64Array.of(3), [0, 0.3, 1])).toEqual([3, 3, 3]);
    expect(percentiles(Float64Array.of(3), [])).toEqual([]);
  });

  it('are refused of no values, and outside 0 to 1', () => {
    expect(() => percentiles(new Float64Array(0), [0.5])).toThrow(RangeError);
    expect(() => percentiles(Float64Array.of(1, 2), [1.01])).toThrow(RangeError);
    expect(() => percentiles(Float64Array.of(1, 2), [NaN])).toThrow(RangeError);
  });
});
