import type { Quantity } from '../../kernel/expression/quantity.ts';

/** Something that is worked out for each year; null in years that have none of it. */
export type ByYear = (year: number) => Quantity | null;

/** Writes each year down once, however often it is asked for: every step is worked out at every keystroke. */
export function eachYearOnce<Found extends Quantity | null>(work: (year: number) => Found): (year: number) => Found {
  const known = new Map<number, Found>();
  return (year) => {
    const before = known.get(year);
    if (before !== undefined) return before;
    const found = work(year);
    known.set(year, found);
    return found;
  };
}

/** The sum of what there is; null where there is nothing. */
export function sumOf(parts: readonly (Quantity | null)[]): Quantity | null {
  return parts.reduce((sum, part) => (sum === null ? part : part === null ? sum : sum.plus(part)), null);
}
