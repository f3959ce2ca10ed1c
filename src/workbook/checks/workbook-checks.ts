import { npvId } from '../../study/investment/npv-id.ts';
import { cellAddress, cellReference, sheetReference } from '../addresses.ts';
import { firstRow, firstYearColumn, valueColumn } from '../model/geometry.ts';
import type { ModelCells } from '../model/model-cells.ts';
import type { CheckRow } from './check-row.ts';

/**
 * How many quantities of all sheets of calculation cannot be worked out. It is told and no check: a branch that is not taken may fail, and
 * harms nothing. What is made of an error shows in the checks of sums.
 */
export function errorCount(cells: ModelCells): CheckRow['offBy'] {
  const parts = cells.layout.calculation.map(({ name, rows }) => {
    const [first, last] = [firstRow, firstRow + rows.length - 1].map((row) => cellAddress(row, valueColumn));
    const range = `${sheetReference(name)}!${first ?? ''}:${last ?? ''}`;
    // What stands there and is no number is an error.
    return `COUNTA(${range})-COUNT(${range})`;
  });
  const errors = cells.layout.calculation.flatMap(({ rows }) =>
    rows.filter((row) => row.kind === 'node' && typeof cells.result(row.index) !== 'number'),
  );
  return { formula: parts.join('+'), result: errors.length };
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
