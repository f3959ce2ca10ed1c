import { npvId } from '../../study/investment/npv-id.ts';
import { cellAddress, cellReference, sheetReference } from '../addresses.ts';
import { firstRow, firstYearColumn, valueColumn } from '../model/geometry.ts';
import type { ModelCells } from '../model/model-cells.ts';
import type { CheckRow } from './check-row.ts';

/** Every quantity of a sheet of calculation can be worked out: the errors on it are counted. */
export function errorChecks(cells: ModelCells): readonly CheckRow[] {
  return cells.layout.calculation.map(({ name, title, rows }): CheckRow => {
    const [first, last] = [firstRow, firstRow + rows.length - 1].map((row) => cellAddress(row, valueColumn));
    const range = `${sheetReference(name)}!${first ?? ''}:${last ?? ''}`;
    const errors = rows.filter((row) => row.kind === 'node' && typeof cells.result(row.index) !== 'number');
    return {
      label: 'Every quantity can be worked out',
      where: title,
      // What stands there and is no number is an error.
      offBy: { formula: `COUNTA(${range})-COUNT(${range})`, result: errors.length },
      measure: { formula: '0', result: 0 },
    };
  });
}

/** The net present value by the spreadsheet's own function, against that of the model. */
export function presentValueCheck(cells: ModelCells, sheet: string): readonly CheckRow[] {
  const { layout, open } = cells;
  const npv = cells.link(npvId, sheet);
  const rates = ['capital.rate', 'capital.inflation'].map((id) => cells.link(id, sheet));
  const [nominal, inflation] = rates;
  const row = layout.years?.rows.findIndex(({ id }) => id === 'flow') ?? -1;
  const last = open.content.investment?.years ?? 0;
  if (layout.years === null || npv === null || row < 0 || last < 1 || !nominal || !inflation) return [];
  const name = layout.years.name;
  const at = (year: number): string =>
    cellReference({ sheet: name, row: firstRow + row, column: firstYearColumn + year }, sheet);
  const flows = `${at(1)}:${cellAddress(firstRow + row, firstYearColumn + last)}`;
  const isReal = open.content.investment?.money === 'real';
  const rate = isReal ? `(1+${nominal.formula})/(1+${inflation.formula})-1` : nominal.formula;
  const outlays = layout.years.rows[row]?.nodes.map((index) => (index === undefined ? 0 : cells.result(index))) ?? [];
  const largest = Math.max(...outlays.map((each) => (typeof each === 'number' ? Math.abs(each) : NaN)));
  const all = `${at(0)}:${cellAddress(firstRow + row, firstYearColumn + last)}`;
  return [
    {
      label: "Net present value agrees with the spreadsheet's own",
      where: 'Investment plan',
      offBy: {
        formula: `${at(0)}+NPV(${rate},${flows})-${npv.formula}`,
        result: typeof npv.result === 'number' ? 0 : NaN,
      },
      measure: { formula: `MAX(MAX(${all}),-MIN(${all}))`, result: largest },
    },
  ];
}
