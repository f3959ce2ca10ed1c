import { jStat } from 'jstat';
import { describe, expect, test } from 'vitest';
import { percentiles } from '../../../src/kernel/random/percentiles.ts';
import { Dice } from '../../support/dice.ts';

function expectPercentiles(values: readonly number[], shares: readonly number[], printed: readonly number[]): void {
  const found = percentiles(Float64Array.from(values), shares);
  expect(found).toHaveLength(printed.length);
  printed.forEach((value, k) => expect(found[k]).toBeCloseTo(value, 12));
}

describe('percentiles agree with', () => {
  // Source: "PERCENTILE.INC function", Microsoft Support, no date, example: 1, 3, 2, 4 at 0.3. By hand: place 3 x 0.3 = 0.9.
  test('the example 1.9 of a spreadsheet manual', () => expectPercentiles([1, 3, 2, 4], [0.3], [1.9]));

  // Source: "PERCENTILE", Spread documentation, MESCIUS, no date, example. By hand: place 4 x 0.45 = 1.8, 15 + 0.8 x 10.
  test('the example 23 of a spreadsheet component', () => expectPercentiles([5, 15, 25, 50, 65], [0.45], [23]));

  // Source: "numpy.percentile", NumPy documentation, examples: the median of the matrix, of its columns and of its rows.
  test('the examples 3.5, 6.5, 4.5, 2.5, 7 and 2 of NumPy', () => {
    expectPercentiles([10, 7, 4, 3, 2, 1], [0.5], [3.5]);
    expectPercentiles([10, 3], [0.5], [6.5]);
    expectPercentiles([7, 2], [0.5], [4.5]);
    expectPercentiles([4, 1], [0.5], [2.5]);
    expectPercentiles([10, 7, 4], [0.5], [7]);
    expectPercentiles([3, 2, 1], [0.5], [2]);
  });

  // Source: "quantile", language reference of an R runtime, TIBCO, release 6.1.0, examples, type 7.
  test('the deciles of 1 to 9 in R', () => {
    const deciles = Array.from({ length: 11 }, (_, k) => k / 10);
    expectPercentiles([1, 2, 3, 4, 5, 6, 7, 8, 9], deciles, [1, 1.8, 2.6, 3.4, 4.2, 5, 5.8, 6.6, 7.4, 8.2, 9]);
  });

  // Source: "R Percentiles", W3Schools, no date: weights of 32 cars (data set mtcars of R, from Henderson and Velleman, Biometrics 37,
  // 1981) and the result of quantile() with type 7.
  test('the quartiles of the weights of 32 cars in R', () => {
    const weights = [
      1.513, 1.615, 1.835, 1.935, 2.14, 2.2, 2.32, 2.465, 2.62, 2.77, 2.78, 2.875, 3.15, 3.17, 3.19, 3.215, 3.435, 3.44,
      3.44, 3.44, 3.46, 3.52, 3.57, 3.57, 3.73, 3.78, 3.84, 3.845, 4.07, 5.25, 5.345, 5.424,
    ];
    expectPercentiles(weights.reverse(), [0, 0.25, 0.5, 0.75, 1], [1.513, 2.58125, 3.325, 3.61, 5.424]);
  });

  test('jstat on a thousand random values', () => {
    const dice = new Dice(17);
    const values = Array.from({ length: 1000 }, () => dice.between(-5, 5));
    const shares = Array.from({ length: 50 }, () => dice.between(0, 1));
    expectPercentiles(
      values,
      shares,
      shares.map((share) => jStat.percentile(values, share)),
    );
  });
});
