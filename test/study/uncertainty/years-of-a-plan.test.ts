import { describe, expect, it } from 'vitest';
import type { GivenDistribution } from '../../../src/case/what-if.ts';
import { trialsOf } from './demonstration.ts';

const id = 'material.mixed.price';
const spread: GivenDistribution = { law: 'normal', mean: '100', deviation: '10' };

/** Deviation of the mean of ten years, in parts of that of one year. */
function tenYears(more: Partial<GivenDistribution>): number {
  const [mean] = trialsOf(id, { [id]: { ...spread, ...more } }, { years: 10 }).results;
  return (mean?.deviation ?? NaN) / 10;
}

// A sample deviation of 20,000 trials has a standard error of 1/sqrt(2 x 20,000) = 0.5 % of itself; 2 % leave four of them.
describe('the deviation of a mean of ten years', () => {
  it('is 0.316 of one year where every year is drawn for itself: 1/sqrt(10)', () => {
    expect(tenYears({ drawn: 'yearly', persistence: '0' }) / Math.sqrt(0.1)).toBeCloseTo(1, 1.7);
  });

  // Var = (n + 2 sum over k of (n - k) r^k) / n^2 = (10 + 2 x 15.7757) / 100 = 0.41551, whose root is 0.645.
  it('is 0.645 of one year where seven tenths of a departure are carried over', () => {
    expect(tenYears({ drawn: 'yearly', persistence: '0.7' }) / 0.6446).toBeCloseTo(1, 1.7);
  });

  it('is that of one year where it is drawn once', () => {
    expect(tenYears({ drawn: 'once' })).toBeCloseTo(1, 1.7);
  });

  it('leaves each single year as it is said to be: the mean stays', () => {
    const [mean] = trialsOf(id, { [id]: { ...spread, drawn: 'yearly' } }, { years: 10 }).results;

    expect(Math.abs((mean?.mean ?? NaN) - 100)).toBeLessThan(4 * (mean?.standardError ?? NaN));
  });
});

describe('how often an input is drawn, where nobody says', () => {
  it('is yearly for a price with 0.7 carried over, and once for all else', () => {
    const { drawn } = trialsOf(id, { [id]: spread, 'recovered.capital': { law: 'uniform', low: '1', high: '2' } });

    expect(drawn.map((each) => [each.id, each.drawn, each.persistence])).toEqual([
      [id, 'yearly', 0.7],
      ['recovered.capital', 'once', 0.7],
    ]);
  });

  it('is told as one year where nothing changes from year to year', () => {
    const summary = trialsOf(id, { [id]: { ...spread, drawn: 'once' } }, { years: 10 });

    expect(summary.years).toBe(1);
  });
});
