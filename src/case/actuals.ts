/** A measured figure beside the computed one: what the books or the meters of the mill say. Nothing is fitted to it. */
export interface Actual {
  /** Id of the quantity it stands beside. */
  readonly result: string;
  readonly value: string;
  /** The unit of the result, or that of a year of it (t/a of t/t). */
  readonly unit: string;
  /** The time it was measured over, as people write it: "2025", "March to June 2026". */
  readonly period?: string;
  readonly source?: string;
}
