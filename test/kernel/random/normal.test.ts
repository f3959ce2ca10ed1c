import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { normalCumulative, normalDensity, normalQuantile } from '../../../src/kernel/random/normal.ts';

describe('normal scores and shares', () => {
  it('undo each other', () => {
    const shares = fc.oneof(
      fc.double({ min: 1e-290, max: 0.5, noNaN: true }),
      fc.double({ min: 0.01, max: 0.5, noNaN: true }),
    );
    fc.assert(
      fc.property(shares, (share) => {
        // A score far out magnifies its own rounding by the square of the score.
        const score = normalQuantile(share);
        expect(Math.abs(normalCumulative(score) / share - 1)).toBeLessThan(1e-15 * (3 + score * score));
      }),
    );
  });

  it('are the same on both sides of the middle', () => {
    fc.assert(
      fc.property(fc.double({ min: -9, max: 9, noNaN: true }), (score) => {
        expect(Math.abs(normalCumulative(score) + normalCumulative(-score) - 1)).toBeLessThan(2.3e-16);
      }),
    );
    for (const share of [0.25, 0.0625, 2 ** -20]) expect(normalQuantile(1 - share)).toBe(-normalQuantile(share));
  });

  it('rise without end towards the shares 0 and 1, and are no number outside', () => {
    expect([0, 0.5, 1].map(normalQuantile)).toEqual([-Infinity, 0, Infinity]);
    expect([-0.1, 1.1, NaN].map(normalQuantile)).toEqual([NaN, NaN, NaN]);
    expect([-Infinity, 0, Infinity].map(normalCumulative)).toEqual([0, 0.5, 1]);
    expect(normalCumulative(NaN)).toBeNaN();
  });

  it('grow where one rule of calculation meets the next', () => {
    for (const seam of [0.66291, 4, 5.656854248, 40])
      for (const sign of [-1, 1]) {
        const [before, at, after] = [-1e-9, 0, 1e-9].map((step) => normalCumulative(sign * seam + step));
        expect(before! <= at! && at! <= after!).toBe(true);
      }
  });

  it('have the density that the shares rise by', () => {
    for (let score = -6; score < 6; score += 0.37) {
      const rise = (normalCumulative(score + 1e-4) - normalCumulative(score - 1e-4)) / 2e-4;
      expect(Math.abs(normalDensity(score) - rise)).toBeLessThan(1e-8);
    }
  });
});
