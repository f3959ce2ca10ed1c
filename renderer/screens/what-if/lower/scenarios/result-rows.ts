import type { ScenarioTable } from '../../../../../src/index.ts';
import { shownLess } from '../../../../numbers/adding-up.ts';
import type { NumberStyle } from '../../../../numbers/number-style.ts';

/** One result beside all scenarios, in the unit it is shown in. */
export interface ResultRow {
  readonly id: string;
  readonly label: string;
  readonly where: string;
  readonly unit: string;
  readonly decimals: number;
  /** As shown, the case as it stands first; NaN where it cannot be worked out. */
  readonly values: readonly number[];
  /** Less the case as it stands, of the figures as shown. */
  readonly less: readonly number[];
}

/** Of which two rows a difference is the difference, so that it is that of the totals shown. */
const facing = { 'difference.total': 'cost.total', 'difference.footprint.total': 'footprint.total' } as const;

export function resultRows(table: ScenarioTable, numbers: NumberStyle): readonly ResultRow[] {
  const scaled = table.results.map((row, place) => {
    const { factor, decimals, unit } = formOf(row.unit, numbers);
    const values = table.columns.map((column) => rounded((column.values[place] ?? NaN) * factor, decimals));
    return { ...row, unit, decimals, values };
  });
  return scaled.map((row) => {
    const total = Object.entries(facing).find(([id]) => id === row.id)?.[1];
    const [base, other] =
      total === undefined ? [] : scaled.filter(({ id }) => id.endsWith(`.${total}`) && id !== row.id);
    const values =
      base === undefined || other === undefined
        ? row.values
        : row.values.map((_, place) => shownLess(other.values[place] ?? NaN, base.values[place] ?? NaN, row.decimals));
    const [first = NaN] = values;
    return { ...row, values, less: values.map((value) => shownLess(value, first, row.decimals)) };
  });
}

/** Money of a tonne in cents, money of a year or of a plan in hundredths of a million, carbon in whole kilograms. */
function formOf(unit: string, numbers: NumberStyle): { factor: number; decimals: number; unit: string } {
  if (unit === `${numbers.currency}/a`) return { factor: 1e-6, decimals: 2, unit: `${numbers.symbol} million/year` };
  if (unit === numbers.currency) return { factor: 1e-6, decimals: 2, unit: `${numbers.symbol} million` };
  return { factor: 1, decimals: unit.startsWith('kgCO2e') ? 0 : 2, unit: numbers.unit(unit) };
}

function rounded(value: number, decimals: number): number {
  const step = 10 ** decimals;
  return Math.round(Number((value * step).toPrecision(12))) / step;
}
