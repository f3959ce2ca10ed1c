import { jStat } from 'jstat';
import { describe, expect, test } from 'vitest';
import { type Distribution, sampler } from '../../../src/kernel/random/distribution.ts';
import { normalQuantile } from '../../../src/kernel/random/normal.ts';

const shares = [1e-6, 1e-4, 0.001, 0.01, 0.05, 0.1, 0.2, 0.3, 0.45, 0.55, 0.7, 0.8, 0.9, 0.95, 0.99, 0.999, 0.9999];

/** Every quantile within `precision` of the one of the independent library, in units of the width or deviation. */
function expectQuantiles(distribution: Distribution, quantile: (share: number) => number, precision: number): void {
  const draw = sampler(distribution);
  for (const share of shares)
    expect(Math.abs(draw(normalQuantile(share)) - quantile(share)), `at ${share}`).toBeLessThan(precision);
}

describe('quantiles agree with jstat for', () => {
  test('a uniform range', () => {
    expectQuantiles({ kind: 'uniform', low: -3, high: 5 }, (p) => jStat.uniform.inv(p, -3, 5), 1e-13);
  });

  test.each([
    [8, 10, 15],
    [-1, 0.5, 1],
  ])('a triangle of %d, %f, %d', (low, mode, high) => {
    const range = { kind: 'triangular', low, mode, high } as const;
    expectQuantiles(range, (p) => jStat.triangular.inv(p, low, high, mode), 1e-11);
  });

  // jstat refuses a mode at an end. By hand: the share below is (x/9)^2 with the mode on the right, 1 - (1 - x/9)^2 with it on the left.
  test('a triangle with its mode at an end, by hand', () => {
    expectQuantiles({ kind: 'triangular', low: 0, mode: 9, high: 9 }, (p) => 9 * Math.sqrt(p), 1e-13);
    expectQuantiles({ kind: 'triangular', low: 0, mode: 0, high: 9 }, (p) => 9 * (1 - Math.sqrt(1 - p)), 1e-13);
  });

  // The beta quantile of jstat stops at about 1e-8.
  test.each([
    [8, 10, 15],
    [0, 0.5, 1],
    [0, 0, 1],
    [2, 12, 12],
  ])('a PERT of %d, %f, %d', (low, mode, high) => {
    const width = high - low;
    const first = 1 + (4 * (mode - low)) / width;
    const quantile = (p: number): number => low + width * jStat.beta.inv(p, first, 6 - first);
    expectQuantiles({ kind: 'PERT', low, mode, high }, quantile, 1e-8 * width);
  });

  test('a normal without bounds', () => {
    const range = { kind: 'normal', mean: 40, deviation: 3, low: -Infinity, high: Infinity } as const;
    expectQuantiles(range, (p) => jStat.normal.inv(p, 40, 3), 1e-10);
  });

  test.each([
    [30, 50],
    [39, 41],
    [38, Infinity],
    [-Infinity, 37],
  ])('a normal of 40 and 3 cut to %d to %d', (low, high) => {
    const below = jStat.normal.cdf(low, 40, 3);
    const share = jStat.normal.cdf(high, 40, 3) - below;
    const range = { kind: 'normal', mean: 40, deviation: 3, low, high } as const;
    expectQuantiles(range, (p) => jStat.normal.inv(below + p * share, 40, 3), 1e-8);
  });

  // Mean 100 and deviation 20: the logarithm has the variance ln 1.04 and the mean ln 100 less half of that.
  const logVariance = Math.log(1.04);
  const logMean = Math.log(100) - logVariance / 2;
  const logDeviation = Math.sqrt(logVariance);

  test('a lognormal without bounds', () => {
    const range = { kind: 'lognormal', mean: 100, deviation: 20, low: 0, high: Infinity } as const;
    expectQuantiles(range, (p) => jStat.lognormal.inv(p, logMean, logDeviation), 1e-9);
  });

  test('a lognormal cut to 80 to 130', () => {
    const below = jStat.lognormal.cdf(80, logMean, logDeviation);
    const share = jStat.lognormal.cdf(130, logMean, logDeviation) - below;
    const range = { kind: 'lognormal', mean: 100, deviation: 20, low: 80, high: 130 } as const;
    expectQuantiles(range, (p) => jStat.lognormal.inv(below + p * share, logMean, logDeviation), 1e-8);
  });
});

// The root of the regularised incomplete beta function, by bisection with 40 digits in mpmath 1.3.0.
describe('quantiles of a PERT, to a thousand-millionth of the width, are for', () => {
  test.each([
    [8, 10, 15, 1e-12, 8.00000589084648828],
    [8, 10, 15, 1e-4, 8.03201241920063627],
    [8, 10, 15, 0.1, 8.90435345930279577],
    [8, 10, 15, 0.5, 10.382588601420245],
    [8, 10, 15, 0.9, 12.2727027463478721],
    [8, 10, 15, 0.9999, 14.5863995495642602],
    [0, 0.3, 1, 1e-12, 1.20340425430120377e-6],
    [0, 0.3, 1, 0.05, 0.0957042835291988736],
    [0, 0.3, 1, 0.5, 0.350999484949117985],
    [0, 0.3, 1, 0.95, 0.691551017711626506],
    [0, 0, 1, 1e-4, 0.0000200008000480033603],
    [0, 0, 1, 0.5, 0.129449436703875861],
    [0, 1, 1, 0.5, 0.870550563296124139],
    [0, 1, 1, 0.9999, 0.999979999199951997],
  ])('%d, %f, %d at %f %f', (low, mode, high, share, value) => {
    const draw = sampler({ kind: 'PERT', low, mode, high });
    expect(Math.abs(draw(normalQuantile(share)) - value)).toBeLessThan(1e-9 * (high - low));
  });
});
