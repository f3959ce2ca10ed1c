import { describe, expect, it } from 'vitest';
import { type OpenCase, editStructure, reconcile } from '../../../src/index.ts';
import {
  actualAfter,
  measuredCells,
  measuredView,
  shownRow,
} from '../../../renderer/screens/reconcile/measured-row.ts';
import { demonstration, valueOf } from '../../examples/demonstration.ts';

const open = demonstration();
const power = 'virgin.electricity.total';
const rowIn = (from: OpenCase) =>
  reconcile(from)
    .flatMap(({ rows }) => rows)
    .find(({ result }) => result === power)!;
const row = rowIn(open);
const actual = { result: power, value: '88000', unit: 'MWh/a', period: '2024', source: 'Main meter' };
const measured = valueOf(editStructure(open, { kind: 'put actual', actual }));

describe('a computed figure on the page', () => {
  it('is shown for a tonne, or for a year of 96,000 t', () => {
    expect(shownRow(row, 'tonne')).toEqual({ computed: row.computed, unit: 'kWh/t' });
    expect(shownRow(row, 'year').unit).toBe('kWh/a');
    expect(shownRow(row, 'year').computed).toBeCloseTo(row.computed * 96_000, 3);
  });

  it('stays in the unit it was measured in, whichever is asked', () => {
    const shown = shownRow(rowIn(measured), 'tonne');

    expect(shown.unit).toBe('MWh/a');
    expect(shown.computed).toBeCloseTo(row.computed * 96, 6);
  });
});

describe('what is typed into the blank', () => {
  it('takes the unit that stands beside it, unless another is typed', () => {
    expect(actualAfter(row, shownRow(row, 'year'), { typed: '90000000' })).toEqual({
      result: power,
      value: '90000000',
      unit: 'kWh/a',
    });
    expect(actualAfter(row, shownRow(row, 'tonne'), { typed: '90000 MWh per year' })).toMatchObject({
      value: '90000',
      unit: 'MWh per year',
    });
  });

  it('keeps period and source, and changes one of them alone', () => {
    const found = rowIn(measured);

    expect(actualAfter(found, shownRow(found, 'tonne'), { typed: '89000' })).toEqual({ ...actual, value: '89000' });
    expect(actualAfter(found, shownRow(found, 'tonne'), { period: '2025' })).toEqual({ ...actual, period: '2025' });
    expect(actualAfter(found, shownRow(found, 'tonne'), { source: '' })).not.toHaveProperty('source');
  });

  it('is one that the case takes', () => {
    const typed = actualAfter(row, shownRow(row, 'tonne'), { typed: '90000 MWh per year' });

    expect(editStructure(open, { kind: 'put actual', actual: typed }).ok).toBe(true);
  });
});

it('is an empty blank while nothing was measured, and a written one after', () => {
  expect(measuredView(row, shownRow(row, 'tonne'))).toMatchObject({ value: '', touched: false, unit: 'kWh/t' });
  const found = rowIn(measured);
  expect(measuredView(found, shownRow(found, 'tonne'))).toMatchObject({ value: '88000', touched: true, unit: 'MWh/a' });
});

it('copies as cells, the gap in per cent, with one row for each result', () => {
  const groups = reconcile(measured);
  const [heads, ...rows] = measuredCells(groups, 'tonne');
  const cells = rows.find(([, label, unit]) => label === 'Electricity needed' && unit === 'MWh/a')!;

  expect(heads).toHaveLength(8);
  expect(rows).toHaveLength(groups.reduce((sum, group) => sum + group.rows.length, 0));
  expect(cells.slice(3)).toEqual([
    expect.closeTo(row.computed * 96, 6),
    88_000,
    expect.closeTo(((row.computed * 96) / 88_000 - 1) * 100, 9),
    '2024',
    'Main meter',
  ]);
});
