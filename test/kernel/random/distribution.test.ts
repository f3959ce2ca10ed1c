import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { type Distribution, deviationOf, meanOf, sampler } from '../../../src/kernel/random/distribution.ts';
import { normalDensity } from '../../../src/kernel/random/normal.ts';
import { boundsOf, randomDistribution } from './random-distribution.ts';

const runs = { numRuns: 60 };

/** A few units in the last place of the figures that a draw is made of. */
function rounding(distribution: Distribution): number {
  return 4e-15 * (Math.abs(meanOf(distribution)) + deviationOf(distribution));
}

function expectAbout(value: number, wanted: number, allowed: number): void {
  if (Number.isFinite(wanted)) expect(Math.abs(value - wanted)).toBeLessThanOrEqual(allowed);
  else expect(value).toBe(wanted);
}

describe('any distribution', () => {
  it('gives nothing outside its bounds, and its bounds at the ends', () => {
    fc.assert(
      fc.property(randomDistribution, (distribution) => {
        const draw = sampler(distribution);
        const [low, high] = boundsOf(distribution);
        for (let score = -9; score <= 9; score += 0.25) {
          expect(draw(score)).toBeGreaterThanOrEqual(low);
          expect(draw(score)).toBeLessThanOrEqual(high);
        }
        expectAbout(draw(-Infinity), low, rounding(distribution));
        expectAbout(draw(Infinity), high, rounding(distribution));
      }),
      runs,
    );
  });

  it('never falls as the score rises', () => {
    fc.assert(
      fc.property(randomDistribution, (distribution) => {
        const draw = sampler(distribution);
        const allowed = rounding(distribution);
        let before = draw(-8.4);
        for (let score = -8.4; score <= 8.4; score += 0.0173) {
          const value = draw(score);
          expect(value).toBeGreaterThanOrEqual(before - allowed);
          before = value;
        }
      }),
      { numRuns: 30 },
    );
  });

  // The integral of the drawn values over the normal scores, by strips of 0.002: what is drawn must have the moments that are told.
  // Jumps and kinks between strips leave errors of a thousandth of the deviation or less.
  it('has the mean and deviation that its draws have', () => {
    const step = 0.002;
    fc.assert(
      fc.property(randomDistribution, (distribution) => {
        const draw = sampler(distribution);
        const average = (of: (value: number) => number): number => {
          let sum = 0;
          for (let score = -8 + step / 2; score < 8; score += step)
            sum += of(draw(score)) * normalDensity(score) * step;
          return sum;
        };
        const mean = average((value) => value);
        const deviation = Math.sqrt(average((value) => (value - mean) ** 2));
        const allowed = 1e-3 * deviation + 1e-12 * Math.abs(mean);
        expect(Math.abs(meanOf(distribution) - mean)).toBeLessThanOrEqual(allowed);
        expect(Math.abs(deviationOf(distribution) - deviation)).toBeLessThanOrEqual(allowed);
      }),
      { numRuns: 40 },
    );
  });
});

describe('a distribution without room', () => {
  it.each<[string, Distribution, number]>([
    ['uniform', { kind: 'uniform', low: 3, high: 3 }, 3],
    ['triangle', { kind: 'triangular', low: 3, mode: 3, high: 3 }, 3],
    ['PERT', { kind: 'PERT', low: 3, mode: 3, high: 3 }, 3],
    ['normal between equal bounds', { kind: 'normal', mean: 5, deviation: 1, low: 3, high: 3 }, 3],
    ['normal without deviation', { kind: 'normal', mean: 3, deviation: 0, low: 0, high: 9 }, 3],
    ['lognormal without deviation', { kind: 'lognormal', mean: 3, deviation: 0, low: 0, high: Infinity }, 3],
    ['single value', { kind: 'discrete', values: [{ value: 3, weight: 0.2 }] }, 3],
  ])('is one value: %s', (_, distribution, value) => {
    expect([-Infinity, -2, 0, 5, Infinity].map(sampler(distribution))).toEqual([value, value, value, value, value]);
    expect([meanOf(distribution), deviationOf(distribution)]).toEqual([value, 0]);
  });
});

describe('a choice of single values', () => {
  it('draws each up to the score where its share is used up, in rising order, and none without weight', () => {
    const values = [
      { value: 20, weight: 1 },
      { value: -5, weight: 2 },
      { value: 7, weight: 0 },
      { value: -50, weight: 0 },
      { value: 9, weight: 1 },
    ];
    const draw = sampler({ kind: 'discrete', values });

    // Half of the weight lies on -5, a quarter each on 9 and 20; three quarters lie below the score 0.6744897501960817.
    expect([-Infinity, -3, 0, 1e-9, 0.674489, 0.67449, 5].map(draw)).toEqual([-5, -5, -5, 9, 9, 20, 20]);
  });
});

describe('figures that make no distribution are refused:', () => {
  it.each<[string, Distribution]>([
    ['low above high', { kind: 'uniform', low: 2, high: 1 }],
    ['an end without end', { kind: 'uniform', low: 2, high: Infinity }],
    ['a mode outside', { kind: 'triangular', low: 1, mode: 4, high: 3 }],
    ['no number', { kind: 'PERT', low: 1, mode: NaN, high: 3 }],
    ['a negative deviation', { kind: 'normal', mean: 1, deviation: -1, low: 0, high: 2 }],
    ['crossed bounds', { kind: 'normal', mean: 1, deviation: 1, low: 2, high: 0 }],
    ['bounds without an end on one side', { kind: 'normal', mean: 1, deviation: 1, low: Infinity, high: Infinity }],
    ['a certain value outside the bounds', { kind: 'normal', mean: 3, deviation: 0, low: 0, high: 2 }],
    ['bounds that hold no probability', { kind: 'normal', mean: 0, deviation: 1, low: 50, high: 51 }],
    ['a lognormal below nothing', { kind: 'lognormal', mean: -1, deviation: 1, low: 0, high: 2 }],
    ['a negative weight', { kind: 'discrete', values: [{ value: 1, weight: -1 }] }],
    ['no weight at all', { kind: 'discrete', values: [{ value: 1, weight: 0 }] }],
  ])('%s', (_, distribution) => {
    expect(() => sampler(distribution)).toThrow(RangeError);
  });
});
