import fc from 'fast-check';
import { EigenvalueDecomposition, Matrix } from 'ml-matrix';
import { describe, expect, it } from 'vitest';
import { checkedCorrelation, correlate, lowerFactor } from '../../../src/kernel/random/correlation.ts';
import { anyCorrelations } from './any-correlations.ts';

function smallestEigenvalue(matrix: number[][]): number {
  return Math.min(...new EigenvalueDecomposition(new Matrix(matrix)).realEigenvalues);
}

describe('checked correlations', () => {
  it('are those given where they are possible, and otherwise possible, with ones on the diagonal', () => {
    const seen = { kept: 0, repaired: 0 };
    fc.assert(
      fc.property(anyCorrelations, (given) => {
        const { matrix, repaired, moved } = checkedCorrelation(given);
        const lowest = smallestEigenvalue(given);
        if (!repaired) {
          seen.kept += 1;
          expect(matrix).toEqual(given);
          expect(moved).toBe(0);
          expect(lowest).toBeGreaterThan(-1e-9);
          return;
        }
        seen.repaired += 1;
        expect(lowest).toBeLessThan(0);
        expect(smallestEigenvalue(matrix)).toBeGreaterThan(0.5e-10);
        matrix.forEach((row, i) => {
          expect(row[i]).toBe(1);
          row.forEach((entry, j) => {
            expect(entry).toBe(matrix[j]![i]);
            expect(Math.abs(entry - given[i]![j]!)).toBeLessThanOrEqual(moved);
          });
        });
      }),
    );
    expect(seen.kept).toBeGreaterThan(10);
    expect(seen.repaired).toBeGreaterThan(10);
  });

  // The set of possible matrices is convex: from the nearest one X, no step towards another possible one Z comes nearer to the given A,
  // which says that the sum of (A - X)(Z - X) over all entries is not positive.
  it('are the nearest possible ones', () => {
    fc.assert(
      fc.property(anyCorrelations, anyCorrelations, (given, other) => {
        const n = Math.min(given.length, other.length);
        const cut = (matrix: number[][]): number[][] => matrix.slice(0, n).map((row) => row.slice(0, n));
        const nearest = checkedCorrelation(cut(given)).matrix;
        const possible = checkedCorrelation(cut(other)).matrix;
        let product = 0;
        nearest.forEach((row, i) =>
          row.forEach((entry, j) => (product += (given[i]![j]! - entry) * (possible[i]![j]! - entry))),
        );
        expect(product).toBeLessThan(1e-8);
      }),
    );
  });

  it('leave inputs alone that have none', () => {
    const { matrix } = checkedCorrelation([
      [1, 0, 0.9, 0.9],
      [0, 1, 0, 0],
      [0.9, 0, 1, -0.9],
      [0.9, 0, -0.9, 1],
    ]);
    expect(matrix[1]).toEqual([0, 1, 0, 0]);
    expect(matrix[0]![2]).toBeCloseTo(0.5, 9);
  });

  it('may be full: the second input then follows the first exactly', () => {
    const { matrix, repaired } = checkedCorrelation([
      [1, 1, 0.3],
      [1, 1, 0.3],
      [0.3, 0.3, 1],
    ]);
    const out = new Float64Array(3);
    correlate(lowerFactor(matrix), 3, Float64Array.of(0.7, -2, 1), 0, out);

    expect(repaired).toBe(false);
    expect(out[1]).toBe(out[0]);
  });

  it('may be none at all', () => {
    expect(checkedCorrelation([])).toEqual({ matrix: [], repaired: false, moved: 0 });
    expect(lowerFactor([])).toEqual(new Float64Array(0));
  });

  it.each([
    ['not square', [[1, 0.5]]],
    [
      'lopsided',
      [
        [1, 0.5],
        [0.4, 1],
      ],
    ],
    ['not one with itself', [[0.9]]],
    [
      'above one',
      [
        [1, 1.1],
        [1.1, 1],
      ],
    ],
    [
      'no number',
      [
        [1, NaN],
        [NaN, 1],
      ],
    ],
  ])('are refused when they are %s', (_, matrix) => {
    expect(() => checkedCorrelation(matrix)).toThrow(RangeError);
  });
});
