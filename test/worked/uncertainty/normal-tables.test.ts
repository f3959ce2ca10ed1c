import { jStat } from 'jstat';
import { describe, expect, test } from 'vitest';
import { normalCumulative, normalQuantile } from '../../../src/kernel/random/normal.ts';

const precision = 1e-14;

describe('the share below a normal score', () => {
  // Source: Abramowitz and Stegun, Handbook of Mathematical Functions, National Bureau of Standards, 1964, table 26.1 (from memory).
  test.each([
    [0, 0.5],
    [0.5, 0.691462461274013],
    [1, 0.841344746068543],
    [2, 0.977249868051821],
    [3, 0.99865010196837],
  ])('is at %f the %f of the table, to its 15 decimals', (score, share) => {
    expect(Math.abs(normalCumulative(score) - share)).toBeLessThan(1e-15);
  });

  // Worked out to 50 digits as erfc(-z/sqrt 2)/2 with mpmath 1.3.0.
  test.each([
    [-37, 5.7255712225245768227e-300],
    [-20, 2.7536241186062336951e-89],
    [-10, 7.619853024160526066e-24],
    [-5, 2.8665157187919391167e-7],
    [-1.5, 0.066807201268858066004],
    [-0.5, 0.30853753872598689636],
    [0.25, 0.59870632568292372424],
    [3, 0.99865010196836990547],
  ])('is at %f, however small, %e to 14 digits', (score, share) => {
    expect(Math.abs(normalCumulative(score) / share - 1)).toBeLessThan(precision);
  });

  test('agrees with jstat, which is good to 13 decimals', () => {
    for (let score = -6; score <= 6; score += 0.013)
      expect(Math.abs(normalCumulative(score) - jStat.normal.cdf(score, 0, 1))).toBeLessThan(1e-13);
  });
});

describe('the normal score of a share', () => {
  // Source: the check values that Wichura prints with AS 241, Applied Statistics 37 (1988) 477-484, as quoted in the tests of R.
  test.each([
    [0.25, -0.6744897501960817],
    [0.001, -3.090232306167814],
    [1e-20, -9.262340089798408],
  ])('is for %f the %f printed with the method', (share, score) => {
    expect(Math.abs(normalQuantile(share) / score - 1)).toBeLessThan(1e-15);
  });

  // The root of erfc(-z/sqrt 2)/2 = p, by Newton's rule with 50 digits in mpmath 1.3.0.
  test.each([
    [1e-300, -37.047096299361199237],
    [1e-100, -21.273453560965324295],
    [1e-15, -7.941345326170996781],
    [1e-5, -4.2648907939228246285],
    [0.075, -1.4395314709384559153],
    [0.3, -0.52440051270804078404],
    [0.6, 0.2533471031357997988],
    [0.975, 1.9599639845400542355],
  ])('is for %e, however small, %f to 14 digits', (share, score) => {
    expect(Math.abs(normalQuantile(share) / score - 1)).toBeLessThan(precision);
  });

  // Source: NIST Technical Note 1297, 1994, 4.3 and 4.4: an interval that holds 95 % is 1.96 deviations on either side, 99 % 2.576; one
  // that holds half is 1/1.48.
  test('gives 1.96 for 95 %, 2.576 for 99 %, and 1.48 deviations for an interval that holds one half', () => {
    expect(normalQuantile(0.975).toFixed(2)).toBe('1.96');
    expect(normalQuantile(0.995).toFixed(3)).toBe('2.576');
    expect((1 / normalQuantile(0.75)).toFixed(2)).toBe('1.48');
  });

  test('agrees with jstat, which is good to 11 digits', () => {
    for (let share = 0.0005; share < 1; share += 0.0011)
      expect(Math.abs(normalQuantile(share) - jStat.normal.inv(share, 0, 1))).toBeLessThan(1e-11);
  });
});
