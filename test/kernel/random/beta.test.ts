import { describe, expect, it } from 'vitest';
import { betaAtScore, betaCumulative, betaDensity, betaOfSix } from '../../../src/kernel/random/beta.ts';
import { normalCumulative } from '../../../src/kernel/random/normal.ts';

const places = [1e-9, 0.001, 0.05, 0.2, 0.37, 0.5, 0.7, 0.9, 0.999];

describe('the share below x of a beta', () => {
  // By hand: with whole shapes the integral of x^(a-1) (1-x)^(5-a) over B(a, 6-a) = (a-1)! (5-a)!/120 is a polynomial.
  it.each([
    [1, (x: number) => -Math.expm1(5 * Math.log1p(-x))],
    [2, (x: number) => x * x * (10 - 20 * x + 15 * x * x - 4 * x ** 3)],
    [3, (x: number) => x ** 3 * (10 - 15 * x + 6 * x * x)],
    [4, (x: number) => x ** 4 * (5 - 4 * x)],
    [5, (x: number) => x ** 5],
  ])('is with the shapes %d and six less that a polynomial', (first, polynomial) => {
    const beta = betaOfSix(first);
    for (const x of places) expect(Math.abs(betaCumulative(beta, x) / polynomial(x) - 1)).toBeLessThan(1e-13);
  });

  it('is none at 0 and all at 1', () => {
    expect([0, 1].map((x) => betaCumulative(betaOfSix(2.3), x))).toEqual([0, 1]);
  });

  it('rises by the density', () => {
    for (const first of [1, 1.3, 2.5, 3.9, 4.7]) {
      const beta = betaOfSix(first);
      for (const x of [0.1, 0.4, 0.8]) {
        const rise = (betaCumulative(beta, x + 1e-5) - betaCumulative(beta, x - 1e-5)) / 2e-5;
        expect(Math.abs(betaDensity(beta, x) - rise)).toBeLessThan(1e-8);
      }
    }
  });
});

describe('the place of a score in a beta', () => {
  it('has the share of the score below it, near the middle and far out', () => {
    for (let first = 1; first <= 5; first += 0.25)
      for (const score of [0, -0.3, -2, -8.3, -20]) {
        const beta = betaOfSix(first);
        const reached = betaCumulative(beta, betaAtScore(beta, score));
        expect(Math.abs(reached / normalCumulative(score) - 1)).toBeLessThan(1e-13);
      }
  });
});
