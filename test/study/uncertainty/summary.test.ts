import { describe, expect, it } from 'vitest';
import { convergenceOf } from '../../../src/study/uncertainty/convergence.ts';
import { histogramOf } from '../../../src/study/uncertainty/histogram.ts';
import { sensitivity } from '../../../src/study/sensitivity.ts';
import { usualUncertainty } from '../../../src/study/uncertainty/usual-uncertainty.ts';
import { uncertainty } from '../../../src/study/uncertainty/uncertainty.ts';
import { open, trialsOf } from './demonstration.ts';

describe('the share of an input in the variance', () => {
  // Two independent prices and a straight line: shares are as the squares of slope times deviation. Deviation of a uniform is width/sqrt(12).
  it('is that of its part of the sum of squares', () => {
    const [mixed, pulp] = ['material.mixed.price', 'material.bctmp.price'];
    const slopes = new Map(sensitivity(open, 'difference.total').judged.map(({ id, slope }) => [id, slope]));
    const part = (id: string, width: number): number => ((slopes.get(id) ?? NaN) * width) ** 2;
    const expected = part(mixed, 100) / (part(mixed, 100) + part(pulp, 60));

    const { variance } = trialsOf('difference.total', {
      [mixed]: { law: 'uniform', low: '60', high: '160' },
      [pulp]: { law: 'uniform', low: '500', high: '560' },
    });

    expect(variance.inputs.find(({ id }) => id === mixed)?.share).toBeCloseTo(expected, 1.5);
    expect(variance.rest).toBeCloseTo(0, 6);
  });

  it('adds up with the rest, for correlated inputs too', () => {
    const { variance } = uncertainty(open, 'difference.total', { trials: 5000 });
    const sum = variance.inputs.reduce((total, { share }) => total + share, 0);

    expect(sum + variance.rest).toBeCloseTo(1, 9);
    expect(variance.rest).toBeGreaterThan(-1e-9);
  });
});

describe('a histogram', () => {
  it('has nothing among its edges, and counts every value once', () => {
    const values = Float64Array.from({ length: 1000 }, (_, k) => k - 300.5);
    const { from, width, counts } = histogramOf(values);

    expect(from / width).toBe(Math.round(from / width));
    expect(counts.reduce((sum, count) => sum + count, 0)).toBe(1000);
    const below = counts.slice(0, -from / width).reduce((sum, count) => sum + count, 0);
    expect(below).toBe(301);
  });

  it('of equal values is one bin with all of them', () => {
    expect(histogramOf(new Float64Array(50).fill(-7)).counts.filter((count) => count > 0)).toEqual([50]);
  });
});

describe('the settling of a mean', () => {
  it('is told at round numbers of trials and at the end, with the error of each', () => {
    const values = Float64Array.from({ length: 1500 }, (_, k) => k % 2);
    const told = convergenceOf(values);

    expect(told.map(({ trials }) => trials)).toEqual([100, 200, 500, 1000, 1500]);
    expect(told.at(-1)?.mean).toBeCloseTo(0.5, 12);
    // Half noughts and half ones: deviation 0.5 sqrt(n / (n - 1)), error 0.5 / sqrt(n - 1).
    expect(told.at(-1)?.standardError).toBeCloseTo(0.5 / Math.sqrt(1499), 12);
  });
});

describe('what is drawn while nobody has said what is uncertain', () => {
  const usual = usualUncertainty(open, 'difference.total');

  it('are inputs that both routes share, over their usual range', () => {
    const ids = Object.keys(usual.inputs);

    expect(ids).toContain('material.bctmp.price');
    expect(ids.filter((id) => id.startsWith('virgin.') || id.startsWith('recovered.'))).toEqual([]);
    expect(usual.inputs['material.bctmp.price']).toEqual({ law: 'triangular', low: '430', high: '850' });
  });

  it('is said to be so', () => {
    const { uncertainty: _given, ...content } = open.content;
    const summary = uncertainty({ ...open, content }, 'difference.total', { trials: 1000 });

    expect(summary.isUsual).toBe(true);
    expect(summary.drawn.length).toBe(Object.keys(usual.inputs).length);
  });
});

describe('correlations that cannot all be true together', () => {
  it('are moved, and it is told by how much', () => {
    const ids = ['material.bctmp.price', 'material.bhkp.price', 'material.bskp.price'] as const;
    const inputs = Object.fromEntries(ids.map((id) => [id, { law: 'uniform', low: '500', high: '900' } as const]));
    const pair = (one: string, other: string, value: string) => ({ one, other, value });

    const possible = trialsOf('difference.total', inputs, {
      correlations: [pair(ids[0], ids[1], '0.9')],
      trials: 1000,
    });
    const impossible = trialsOf('difference.total', inputs, {
      trials: 1000,
      correlations: [pair(ids[0], ids[1], '0.9'), pair(ids[1], ids[2], '0.9'), pair(ids[0], ids[2], '-0.9')],
    });

    expect(possible.repaired).toBeNull();
    expect(impossible.repaired).toBeGreaterThan(0.1);
  });
});
