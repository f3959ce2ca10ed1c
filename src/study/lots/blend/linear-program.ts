/** The least sum of costs x amounts, amounts being at least 0, within the rows. */
export interface LinearProgram {
  readonly costs: readonly number[];
  readonly rows: readonly LinearRow[];
}

/** Sum of coefficients x amounts; null where an end is open. */
export interface LinearRow {
  readonly coefficients: readonly number[];
  readonly least: number | null;
  readonly most: number | null;
}

/** Amounts of the cheapest solution, or that there is none. */
export type LinearAnswer =
  | { readonly kind: 'solved'; readonly amounts: readonly number[] }
  | { readonly kind: 'impossible' }
  /** The solver gave up; what it said. */
  | { readonly kind: 'unsolved'; readonly status: string };

export type LinearSolver = (program: LinearProgram) => LinearAnswer;

/** The program in the LP format: rows named r0, r1, ... and amounts a0, a1, ... */
export function linearText({ costs, rows }: LinearProgram): string {
  const bounds = rows.flatMap(({ coefficients, least, most }, place) => {
    const sum = sumText(coefficients);
    if (least !== null && least === most) return [` r${String(place)}: ${sum} = ${String(most)}`];
    return [
      ...(most === null ? [] : [` r${String(place)}u: ${sum} <= ${String(most)}`]),
      ...(least === null ? [] : [` r${String(place)}l: ${sum} >= ${String(least)}`]),
    ];
  });
  return ['Minimize', ` cost: ${sumText(costs)}`, 'Subject To', ...bounds, 'End', ''].join('\n');
}

function sumText(coefficients: readonly number[]): string {
  return coefficients
    .map((value, place) => `${value < 0 ? '-' : '+'} ${String(Math.abs(value))} a${String(place)}`)
    .join(' ');
}
