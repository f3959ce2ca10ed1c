import { describe, expect, it } from 'vitest';
import { betaAtScore, betaOfSix, mirrored } from '../../../src/kernel/random/beta.ts';
import { sampler } from '../../../src/kernel/random/distribution.ts';
import { normalCumulative, normalQuantile } from '../../../src/kernel/random/normal.ts';

describe('a table over normal scores errs by less than', () => {
  // The quantile itself, solved for each score.
  it.each([0, 0.01, 0.2857, 0.5, 0.8, 1])('1e-11 of the width in a PERT with its mode at %f of it', (mode) => {
    const beta = betaOfSix(1 + 4 * mode);
    const draw = sampler({ kind: 'PERT', low: 0, mode, high: 1 });
    for (let score = -8.7; score < 8.7; score += 0.0191) {
      const solved = score <= 0 ? betaAtScore(beta, score) : 1 - betaAtScore(mirrored(beta), -score);
      expect(Math.abs(draw(score) - solved)).toBeLessThan(1e-11);
    }
  });

  // The share within the bounds, turned back: from + u (to - from) in shares, which holds its digits below the middle.
  it.each([
    [-3, 1],
    [-1, 0.5],
    [-Infinity, 0],
    [-8, -1],
    [-30, -20],
  ])('1e-9 of the deviation in a normal cut to %d to %d deviations', (low, high) => {
    const [below, upTo] = [normalCumulative(low), normalCumulative(high)];
    const draw = sampler({ kind: 'normal', mean: 0, deviation: 1, low, high });
    const mirror = sampler({ kind: 'normal', mean: 0, deviation: 1, low: -high, high: -low });
    for (let score = -8.7; score < 5; score += 0.0191) {
      const solved = normalQuantile(below + (upTo - below) * normalCumulative(score));
      expect(Math.abs(draw(score) - solved)).toBeLessThan(1e-9);
      expect(mirror(-score)).toBe(-draw(score));
    }
  });
});
