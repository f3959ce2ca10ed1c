import type { InputView } from '../../src/index.ts';

/** Whether the figure in force lies outside its usual range. It counts all the same; the slot only asks for a second look. */
export function isOutsideUsual({ value, low, high }: InputView): boolean {
  if (value === '') return false;
  const figure = Number(value);
  return (low !== null && figure < Number(low)) || (high !== null && figure > Number(high));
}
