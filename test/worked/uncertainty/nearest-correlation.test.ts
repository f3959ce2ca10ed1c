import { describe, expect, test } from 'vitest';
import { checkedCorrelation } from '../../../src/kernel/random/correlation.ts';

function expectRepaired(given: number[][], printed: number[][], decimals: number): void {
  const { matrix, repaired } = checkedCorrelation(given);
  expect(repaired).toBe(true);
  expect(matrix.map((row) => row.map((entry) => entry.toFixed(decimals)))).toEqual(
    printed.map((row) => row.map((entry) => entry.toFixed(decimals))),
  );
}

describe('the nearest possible correlations', () => {
  // Source: Higham, "Computing the nearest correlation matrix: a problem from finance", IMA Journal of Numerical Analysis 22 (2002)
  // 329-343, first example (from memory).
  test('to 1 and 1 with nothing between the outer two are 0.7607 and 0.1573', () => {
    expectRepaired(
      [
        [1, 1, 0],
        [1, 1, 1],
        [0, 1, 1],
      ],
      [
        [1, 0.7607, 0.1573],
        [0.7607, 1, 0.7607],
        [0.1573, 0.7607, 1],
      ],
      4,
    );
  });

  // Source: NAG Library, example program results of g02aa, mark 28.5, nearest correlation matrix. The diagonal given there is 2, but a
  // diagonal that has to become 1 does not change which matrix is nearest.
  test('to -1 between neighbours of four are those of a numerical library', () => {
    expectRepaired(
      [
        [1, -1, 0, 0],
        [-1, 1, -1, 0],
        [0, -1, 1, -1],
        [0, 0, -1, 1],
      ],
      [
        [1, -0.8084, 0.1916, 0.1068],
        [-0.8084, 1, -0.6562, 0.1916],
        [0.1916, -0.6562, 1, -0.8084],
        [0.1068, 0.1916, -0.8084, 1],
      ],
      4,
    );
  });

  // By hand: turning the sign of the first leaves -r between all three, whose smallest eigenvalue is 1 - 2r; so r may be 0.5 at most, and
  // by symmetry the nearest has the same r everywhere.
  test('to 0.9, 0.9 and -0.9 are 0.5, 0.5 and -0.5', () => {
    expectRepaired(
      [
        [1, 0.9, 0.9],
        [0.9, 1, -0.9],
        [0.9, -0.9, 1],
      ],
      [
        [1, 0.5, 0.5],
        [0.5, 1, -0.5],
        [0.5, -0.5, 1],
      ],
      9,
    );
  });
});
