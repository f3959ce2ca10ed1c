/** Throws unless the numbers are finite and never fall from one to the next. */
export function demandRising(...marks: readonly number[]): void {
  marks.forEach((mark, place) => {
    if (!Number.isFinite(mark) || mark < (marks[place - 1] ?? -Infinity))
      throw new RangeError(`The marks of a distribution must be finite and rise: ${marks.join(', ')}.`);
  });
}

/** A value kept within two bounds, which rounding may have overstepped. */
export function within(low: number, value: number, high: number): number {
  return value < low ? low : value > high ? high : value;
}
