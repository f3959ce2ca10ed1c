import type { InputView } from '../../src/index.ts';

/** Whether the figure in force lies outside its usual range. It counts all the same; the slot only asks for a second look. */
export function isOutsideUsual({ value, low, high }: InputView): boolean {
  // A range of one point is no range: it is what stands there until somebody gives a figure.
  if (value === '' || (low !== null && low === high)) return false;
  const figure = Number(value);
  return (low !== null && figure < Number(low)) || (high !== null && figure > Number(high));
}
