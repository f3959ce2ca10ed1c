/** Something that must be nothing, and what it is measured by: it is kept where it is below a billionth of that. */
export interface CheckRow {
  readonly label: string;
  readonly where: string;
  /** Over names of cells. `offBy` is a formula that must come to nothing; NaN where it cannot be worked out. */
  readonly offBy: { readonly formula: string; readonly result: number };
  readonly measure: { readonly formula: string; readonly result: number };
}

/** Far above what binary numbers round off, far below what any figure is known to. */
export const tolerance = 1e-9;

export function isKept({ offBy, measure }: CheckRow): boolean {
  return Math.abs(offBy.result) <= tolerance * Math.abs(measure.result);
}
