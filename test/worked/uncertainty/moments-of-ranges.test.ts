import { describe, expect, test } from 'vitest';
import { type Distribution, deviationOf, meanOf } from '../../../src/kernel/random/distribution.ts';

function expectMoments(distribution: Distribution, mean: number, deviation: number): void {
  expect(Math.abs(meanOf(distribution) - mean)).toBeLessThan(1e-12 * Math.max(1, Math.abs(mean)));
  expect(Math.abs(deviationOf(distribution) / deviation - 1)).toBeLessThan(1e-12);
}

// Source: "pert: The (Modified) PERT Distribution", manual of the package mc2d, no date, details: mean (8 + 4 x 10 + 15)/6 and shapes
// 1 + 8/7 and 1 + 20/7. The deviation follows: 7 sqrt(15/7 x 27/7/(36 x 7)) = 7 sqrt(405/12348) = 1.267731; (15 - 8)/6 would be 1.166667.
test('a PERT of 8, 10, 15 has the mean 10.5 and the deviation 1.267731 of its beta, not a sixth of its width', () => {
  const range = { kind: 'PERT', low: 8, mode: 10, high: 15 } as const;

  expect(meanOf(range)).toBe(10.5);
  expect(deviationOf(range).toFixed(6)).toBe('1.267731');
  expectMoments(range, 10.5, 7 * Math.sqrt(405 / 12348));
});

// Source: "PERT/triangular", rhces.com, no date, method note: the mean is (8 + 10 + 15)/3. The deviation follows from
// (64 + 100 + 225 - 80 - 120 - 150)/18 = 39/18 (formula from memory).
test('a triangle of 8, 10, 15 has the mean 11 and the deviation 1.471960', () => {
  const range = { kind: 'triangular', low: 8, mode: 10, high: 15 } as const;

  expect(deviationOf(range).toFixed(6)).toBe('1.471960');
  expectMoments(range, 11, Math.sqrt(39 / 18));
});

// Source: a guide to measurement uncertainty with the wording of the Eurachem/CITAC guide, appendix E.1: 7 to 10 gives 1.5/sqrt 3 = 0.87.
test('a value anywhere between 7 and 10 has the standard uncertainty 0.87', () => {
  const range = { kind: 'uniform', low: 7, high: 10 } as const;

  expect(deviationOf(range).toFixed(2)).toBe('0.87');
  expectMoments(range, 8.5, 1.5 / Math.sqrt(3));
});

// Source: Guide to the Expression of Uncertainty in Measurement, JCGM 100, 2008, 4.3.9 (from memory): half width over the root of six.
test('an even triangle has its half width over the root of six', () => {
  expectMoments({ kind: 'triangular', low: 4, mode: 6, high: 8 }, 6, 2 / Math.sqrt(6));
});

// By hand: 0.2 x 0 + 0.5 x 10 + 0.3 x 20 = 11; squares of the distances 0.2 x 121 + 0.5 x 1 + 0.3 x 81 = 49.
test('values 0, 10 and 20 weighing 2, 5 and 3 have the mean 11 and the deviation 7', () => {
  const values = [0, 10, 20].map((value, k) => ({ value, weight: [2, 5, 3][k]! }));

  expectMoments({ kind: 'discrete', values }, 11, 7);
});

describe('a normal distribution', () => {
  const whole = { kind: 'normal', mean: 0, deviation: 1, low: -Infinity, high: Infinity } as const;

  test('without bounds has the mean and deviation it was given', () => {
    const given = { ...whole, mean: 7.3, deviation: 0.1 };
    expect([meanOf(given), deviationOf(given)]).toEqual([7.3, 0.1]);
  });

  // Johnson, Kotz and Balakrishnan, Continuous Univariate Distributions 1, Wiley, 1994, 13.10 (from memory): with f the density and
  // P the share within [-a, a], the variance is 1 - 2 a f(a)/P; of the half above nothing the mean is sqrt(2/pi).
  test('above nothing has the mean sqrt(2/pi) and the variance 1 - 2/pi', () => {
    expectMoments({ ...whole, low: 0 }, Math.sqrt(2 / Math.PI), Math.sqrt(1 - 2 / Math.PI));
    expectMoments({ ...whole, high: 0 }, -Math.sqrt(2 / Math.PI), Math.sqrt(1 - 2 / Math.PI));
  });

  // f(1) = 0.24197072451914337, P = 0.6826894921370859: 1 - 0.48394144903828673/0.6826894921370859 = 0.29112509477.
  test('within one deviation has the variance 0.291125', () => {
    expectMoments({ ...whole, low: -1, high: 1 }, 0, Math.sqrt(1 - (2 * 0.24197072451914337) / 0.6826894921370859));
  });

  // Integrals of the density, first and second moment to 40 digits with mpmath 1.3.0.
  test.each([
    [10, 3, 8, 11, 9.54027706722901279, 0.851091793900294185],
    [10, 1, 13, 14, 13.2604542855900212, 0.22198602158107417],
    [0, 1, 8, 9, 8.12118899297979712, 0.118947647235025675],
  ])(
    'of %d and %d cut to %d to %d has the mean %f and the deviation %f',
    (mean, deviation, low, high, first, second) => {
      expectMoments({ kind: 'normal', mean, deviation, low, high }, first, second);
    },
  );

  // By hand: so narrow a stretch is as good as even: middle 2.0005 less a slope of 2 x 0.001^2/12, deviation 0.001/sqrt 12.
  test('cut to a thousandth loses no digits', () => {
    const narrow = { ...whole, low: 2, high: 2.001 };
    expect(meanOf(narrow)).toBeCloseTo(2.0005 - (2 * 0.001 ** 2) / 12, 9);
    expect(deviationOf(narrow) / (0.001 / Math.sqrt(12))).toBeCloseTo(1, 6);
  });
});

describe('a lognormal distribution', () => {
  test('without bounds has the mean and deviation it was given', () => {
    const given = { kind: 'lognormal', mean: 100, deviation: 20, low: 0, high: Infinity } as const;
    expect([meanOf(given), deviationOf(given)]).toEqual([100, 20]);
  });

  // Bounds so wide that they cut nothing: the quadrature meets the figures it started from.
  test('cut by bounds that hold everything keeps its mean and deviation', () => {
    expectMoments({ kind: 'lognormal', mean: 100, deviation: 200, low: 1e-9, high: 1e12 }, 100, 200);
  });

  // Integrals of the density, first and second moment to 40 digits with mpmath 1.3.0.
  test.each([
    [100, 20, 80, 130, 101.168290208048012, 12.8443394684264202],
    [100, 200, 10, 500, 85.6081842533679184, 89.9154824286686557],
  ])(
    'of %d and %d cut to %d to %d has the mean %f and the deviation %f',
    (mean, deviation, low, high, first, second) => {
      expectMoments({ kind: 'lognormal', mean, deviation, low, high }, first, second);
    },
  );
});
