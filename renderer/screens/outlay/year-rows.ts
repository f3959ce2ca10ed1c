import { planRowId, type PlanResults } from '../../../src/index.ts';
import { addingUp, shownLess } from '../../numbers/adding-up.ts';
import type { PlanScale } from './plan-scale.ts';

/** One figure of the table of years, as shown; NaN where it cannot be worked out, no id where the row has nothing in that year. */
export interface YearCell {
  readonly year: number;
  readonly id: string | null;
  readonly value: number;
}

export interface YearRow {
  readonly id: string;
  readonly label: string;
  readonly kind: 'line' | 'flow' | 'sum';
  readonly cells: readonly YearCell[];
}

/**
 * The table of years in the money of the scale. What is shown adds up: the lines of a year to its flow, and the flows to the running sum.
 * So the running sum is rounded by itself, a flow is the step from one sum to the next, and each line takes its share of what is left.
 */
export function yearRows(results: PlanResults, scale: PlanScale, isAfterTax: boolean): readonly YearRow[] {
  const sums = results.cumulative.map((value) => rounded(value, scale));
  const flows = results.flows.map((value, year) => {
    const step = shownLess(sums[year] ?? NaN, year === 0 ? 0 : (sums[year - 1] ?? NaN), scale.decimals);
    return Number.isFinite(step) ? step : rounded(value, scale);
  });
  const lines = results.rows.filter(({ values }) => values.some((value) => value !== 0));
  const shown = flows.map((flow, year) =>
    addingUp(
      lines.map(({ values }) => (values[year] ?? NaN) / scale.factor),
      flow,
      scale.decimals,
    ),
  );
  const whole = (values: readonly number[], row: 'flow' | 'cumulative'): readonly YearCell[] =>
    values.map((value, year) => ({ year, id: planRowId(row, year), value }));
  return [
    ...lines.map(({ id, label, ids }, line): YearRow => ({
      id,
      label,
      kind: 'line',
      cells: ids.map((cell, year) => ({ year, id: cell, value: shown[year]?.[line] ?? NaN })),
    })),
    { id: 'flow', label: isAfterTax ? 'After tax' : 'Before tax', kind: 'flow', cells: whole(flows, 'flow') },
    { id: 'cumulative', label: 'Cumulative', kind: 'sum', cells: whole(sums, 'cumulative') },
  ];
}

function rounded(value: number, { factor, decimals }: PlanScale): number {
  const step = 10 ** decimals;
  return Math.round(Number(((value / factor) * step).toPrecision(12))) / step;
}
