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
 * The table of years in the money of the scale. Flows and their running sum are rounded each by itself, the lines of a year so that they add
 * up to its flow. A line that is worth the same in two years is rounded by itself, so that it looks the same in both; what that
 * costs goes to the other lines of the year, and where there is none, the last digit of a sum is not that of its parts.
 */
export function yearRows(results: PlanResults, scale: PlanScale, isAfterTax: boolean): readonly YearRow[] {
  const sums = results.cumulative.map((value) => rounded(value, scale));
  const flows = results.flows.map((value) => rounded(value, scale));
  const lines = results.rows.filter(({ values }) => values.some((value) => value !== 0));
  const isRepeated = lines.map(({ values }) => repeatedIn(values));
  const shown = flows.map((flow, year) => {
    const exact = lines.map(({ values }) => values[year] ?? NaN);
    const fixed = exact.map((value, line) => (isRepeated[line]?.(value) === true ? rounded(value, scale) : null));
    return aroundFixed(
      exact.map((value) => value / scale.factor),
      fixed,
      flow,
      scale.decimals,
    );
  });
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

/** Whether a value, to ten digits, stands in more than one year. */
function repeatedIn(values: readonly number[]): (value: number) => boolean {
  const digits = values.map((value) => value.toPrecision(10));
  const met = new Set<string>();
  const repeated = new Set(digits.filter((each) => met.has(each) || !met.add(each)));
  return (value) => repeated.has(value.toPrecision(10));
}

/** Figures of one year: those that are fixed stay, the others add up to what is left of the flow. */
function aroundFixed(
  exact: readonly number[],
  fixed: readonly (number | null)[],
  flow: number,
  decimals: number,
): readonly number[] {
  const left = fixed.reduce<number>((rest, value) => shownLess(rest, value ?? 0, decimals), flow);
  const free = addingUp(
    exact.filter((_, line) => fixed[line] === null),
    left,
    decimals,
  );
  let next = 0;
  return fixed.map((value) => value ?? free[next++] ?? NaN);
}

function rounded(value: number, { factor, decimals }: PlanScale): number {
  const step = 10 ** decimals;
  return Math.round(Number(((value / factor) * step).toPrecision(12))) / step;
}
