import { jStat } from 'jstat';
import { describe, expect, test } from 'vitest';
import { correlate, lowerFactor } from '../../../src/kernel/random/correlation.ts';
import { sampler } from '../../../src/kernel/random/distribution.ts';
import { fillNormalScores } from '../../../src/kernel/random/normal-scores.ts';

const trials = 3000;

/** Trials of two quantities of different shapes whose normal scores have the correlation r. */
function drawn(r: number): { one: number[]; other: number[] } {
  const factor = lowerFactor([
    [1, r],
    [r, 1],
  ]);
  const pulp = sampler({ kind: 'lognormal', mean: 700, deviation: 150, low: 0, high: Infinity });
  const paper = sampler({ kind: 'triangular', low: 60, mode: 90, high: 200 });
  const scores = new Float64Array(2);
  const one: number[] = [];
  const other: number[] = [];
  for (let trial = 0; trial < trials; trial += 1) {
    fillNormalScores(2024, trial, scores, 2);
    correlate(factor, 2, scores, 0, scores);
    one.push(pulp(scores[0]!));
    other.push(paper(scores[1]!));
  }
  return { one, other };
}

/** Kendall's tau: of all pairs of trials, the share that runs alike less the share that runs against. */
function kendall(one: readonly number[], other: readonly number[]): number {
  let sum = 0;
  for (let i = 0; i < one.length; i += 1)
    for (let j = 0; j < i; j += 1) sum += Math.sign((one[i]! - one[j]!) * (other[i]! - other[j]!));
  return sum / ((one.length * (one.length - 1)) / 2);
}

// Source: Pearson's relation for a normal pair, rho = 6/pi asin(r/2), and tau = 2/pi asin(r), as quoted at Cross Validated, question
// 262061. Ranks do not change with the shapes of the quantities, so the relations hold for any two.
// The standard error of a rank correlation is 1/sqrt(n - 1) where there is none and less where there is one (from memory); that of tau is
// two thirds of it. For n = 3000 it is 0.018; three are allowed.
const tolerance = 3 / Math.sqrt(trials);

describe('quantities drawn by scores of correlation r', () => {
  // 2 sin(pi 0.5/6) = 2 sin 15 degrees = 0.517638.
  test('have a rank correlation of 0.5 where r is 0.517638', () => {
    const r = 2 * Math.sin((Math.PI * 0.5) / 6);
    const { one, other } = drawn(r);

    expect(r.toFixed(6)).toBe('0.517638');
    expect(Math.abs(jStat.spearmancoeff(one, other) - 0.5)).toBeLessThan(tolerance);
  });

  test.each([-0.8, 0, 0.3, 0.9])('have the rank correlations that belong to r = %f', (r) => {
    const { one, other } = drawn(r);

    expect(Math.abs(jStat.spearmancoeff(one, other) - (6 / Math.PI) * Math.asin(r / 2))).toBeLessThan(tolerance);
    expect(Math.abs(kendall(one, other) - (2 / Math.PI) * Math.asin(r))).toBeLessThan(tolerance);
  });
});
