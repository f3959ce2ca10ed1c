import { describe, expect, it } from 'vitest';
import { planScale } from '../../../renderer/screens/outlay/plan-scale.ts';
import { yearRows, type YearRow } from '../../../renderer/screens/outlay/year-rows.ts';
import { madeUp, planCase } from './plan-case.ts';

const tenths = (value: number): number => Math.round(value * 10);
const rowNamed = (rows: readonly YearRow[], id: string): YearRow => {
  const row = rows.find((each) => each.id === id);
  if (row === undefined) throw new Error(`There is no row "${id}".`);
  return row;
};

describe('the table of years', () => {
  const { results } = planCase().answer;
  const rows = yearRows(results, planScale(results), true);
  const lines = rows.filter(({ kind }) => kind === 'line');
  const flow = rowNamed(rows, 'flow');
  const sum = rowNamed(rows, 'cumulative');

  it('adds the lines of each year up to its flow, as shown', () => {
    for (const [year, { value }] of flow.cells.entries()) {
      const added = lines.reduce((all, { cells }) => all + tenths(cells[year]?.value ?? NaN), 0);
      expect(added, `year ${String(year)}`).toBe(tenths(value));
    }
  });

  it('shows each flow and each running sum to the nearest step', () => {
    for (const [year, { value }] of flow.cells.entries()) {
      expect(Math.abs(value - (results.flows[year] ?? NaN) / 1e6)).toBeLessThanOrEqual(0.05 + 1e-9);
      expect(Math.abs((sum.cells[year]?.value ?? NaN) - (results.cumulative[year] ?? NaN) / 1e6)).toBeLessThanOrEqual(
        0.05 + 1e-9,
      );
    }
  });

  it('shows a saving that stays the same the same in every year, whatever its sum rounds to', () => {
    // 11.15 and a tax of 2.04 that ends: 9.11 is 9.1, and 11.15 alone is 11.2.
    const years = [0, 1, 2, 3, 4, 5, 6];
    const tax = years.map((year) => (year > 0 && year < 4 ? -2.04e6 : 0));
    const saving = years.map((year) => (year > 0 ? 11.15e6 : 0));
    const flows = years.map((year) => (year === 0 ? -40e6 : (saving[year] ?? 0) + (tax[year] ?? 0)));
    const constant = madeUp(flows, {
      rows: [
        {
          id: 'capital',
          label: 'Capital',
          ids: years.map(() => null),
          values: years.map((year) => (year === 0 ? -40e6 : 0)),
        },
        { id: 'saving', label: 'Saving', ids: years.map(() => null), values: saving },
        { id: 'tax', label: 'Tax', ids: years.map(() => null), values: tax },
      ],
    });
    const shown = yearRows(constant, planScale(constant), true);

    const cells = (id: string) => rowNamed(shown, id).cells.map(({ value }) => value);
    expect(cells('saving')).toEqual([0, 11.2, 11.2, 11.2, 11.2, 11.2, 11.2]);
    expect(cells('tax')).toEqual([0, -2, -2, -2, 0, 0, 0]);
    expect(cells('flow')).toEqual([-40, 9.1, 9.1, 9.1, 11.2, 11.2, 11.2]);
  });

  it('shows no figure a whole step or more from what was worked out', () => {
    for (const { id, cells } of lines)
      for (const { year, value } of cells) {
        const exact = (results.rows.find((row) => row.id === id)?.values[year] ?? NaN) / 1e6;
        expect(Math.abs(value - exact), `${id} in year ${String(year)}`).toBeLessThan(0.1);
      }
  });

  it('rounds the running sum by itself: 3.208 million is 3.2', () => {
    expect(results.cumulative[6]).toBeCloseTo(3_208_332, 0);
    expect(sum.cells[6]?.value).toBe(3.2);
  });

  it('leaves rows out that are nothing in every year', () => {
    const nothing = madeUp([-5e6, 9e6], {
      rows: [
        { id: 'capital', label: 'Capital', ids: ['investment.capital.0', null], values: [-5e6, 0] },
        { id: 'saving', label: 'Saving', ids: [null, 'investment.saving.1'], values: [0, 9e6] },
        { id: 'outage', label: 'Outage', ids: [null, 'investment.outage.1'], values: [0, 0] },
      ],
    });
    const ids = yearRows(nothing, planScale(nothing), false).map(({ id }) => id);
    expect(ids).toEqual(['capital', 'saving', 'flow', 'cumulative']);
  });

  it('gives no number from the year on that cannot be worked out, and keeps those before', () => {
    const broken = madeUp([-5e6, NaN, 3e6]);
    const shown = yearRows(broken, planScale(broken), true);
    expect(rowNamed(shown, 'flow').cells.map(({ value }) => value)).toEqual([-5, NaN, 3]);
    expect(rowNamed(shown, 'cumulative').cells.map(({ value }) => value)).toEqual([-5, NaN, NaN]);
  });

  it('shows flows of 0.05 million alike, though their running sums are 2.1, 2.1 and 2.2', () => {
    const small = madeUp([2.05e6, 0.05e6, 0.05e6]);
    const rows = yearRows(small, planScale(small), true);
    expect(rowNamed(rows, 'flow').cells.map(({ value }) => value)).toEqual([2.1, 0.1, 0.1]);
    expect(rowNamed(rows, 'cumulative').cells.map(({ value }) => value)).toEqual([2.1, 2.1, 2.2]);
  });

  it('says whether tax has been taken', () => {
    expect(flow.label).toBe('After tax');
    expect(rowNamed(yearRows(results, planScale(results), false), 'flow').label).toBe('Before tax');
  });
});

describe('the money of a plan', () => {
  it('is millions for a plan of two million and more, thousands below, billions far above', () => {
    expect(planScale(madeUp([-40e6, 5e6])).word).toBe('million');
    expect(planScale(madeUp([-2e6, 1e6])).word).toBe('million');
    expect(planScale(madeUp([-1.9e6, 1e6])).word).toBe('thousand');
    expect(planScale(madeUp([-2e10, 1e9])).word).toBe('billion');
  });

  it('is millions where nothing flows', () => {
    expect(planScale(madeUp([0, 0])).word).toBe('million');
  });
});
