import { describe, expect, it } from 'vitest';
import { spentSums } from '../../../renderer/screens/outlay/spent-sums.ts';
import { planCase } from './plan-case.ts';

const { spread, answer } = planCase();
const { results } = answer;
const hundredths = (value: number | undefined): number => Math.round((value ?? NaN) * 100);

describe('what is spent', () => {
  const sums = spentSums(results.plan, spread.inputs, [0, 1, 2]);

  // Year 0: 17.5 + 6.4 + 3.1 + 2.0 + 1.1 = 30.1 million, with 16 % 34.916. Year 1: 3.2 + 0.9 + 0.7 + 0.7 = 5.5, with 16 % 6.38.
  it('is every item with contingency on top', () => {
    expect(sums.total).toEqual([34.92, 6.38, 0, 41.3]);
    expect(sums.contingency).toEqual([4.82, 0.88, 0, 5.7]);
  });

  it('is what the plan itself takes as capital', () => {
    const capital = results.rows.find(({ id }) => id === 'capital')?.values ?? [];
    expect(sums.total[0]).toBeCloseTo(-(capital[0] ?? NaN) / 1e6, 2);
    expect(sums.total[1]).toBeCloseTo(-(capital[1] ?? NaN) / 1e6, 2);
  });

  it('adds items up over the years', () => {
    expect(sums.items.find(({ id }) => id === 'pulping')?.together).toBe(20.7);
  });

  it('adds years up to the whole even where each is rounded', () => {
    const third = { ...spread.inputs };
    for (const [id, value] of [
      ['investment.item.pulping.0', '333333'],
      ['investment.item.pulping.1', '333333'],
      ['investment.contingency', '10'],
    ] as const) {
      const input = third[id];
      if (input === undefined) throw new Error(`There is no ${id}.`);
      third[id] = { ...input, value };
    }
    const made = spentSums(results.plan, third, [0, 1, 2]);
    const years = made.total.slice(0, 3).reduce((all, value) => all + hundredths(value), 0);
    expect(years).toBe(hundredths(made.total[3]));
    const extra = made.contingency.slice(0, 3).reduce((all, value) => all + hundredths(value), 0);
    expect(extra).toBe(hundredths(made.contingency[3]));
  });

  it('is nothing where nothing is given', () => {
    expect(spentSums({ ...results.plan, items: [] }, {}, [0, 1]).total).toEqual([0, 0, 0]);
  });
});
