import { scaleLinear } from 'd3-scale';
import type { InputView } from '../../../src/index.ts';

/** Where the usual range and the value stand on a line of a given width; null where no range is known. */
export interface UsualRange {
  readonly from: number;
  readonly to: number;
  readonly value: number | null;
  readonly isOutside: boolean;
}

// Free room at either side of the range, as a part of it.
const margin = 0.6;

export function layOutUsualRange(
  { low, high, value }: Pick<InputView, 'low' | 'high' | 'value'>,
  width: number,
): UsualRange | null {
  if (low === null || high === null || Number(low) >= Number(high)) return null;
  const [least, most] = [Number(low), Number(high)];
  const free = (most - least) * margin;
  const given = value === '' ? null : Number(value);
  const ends = given === null ? [] : [given];
  const x = scaleLinear([Math.min(least - free, ...ends), Math.max(most + free, ...ends)], [6, width - 6]);
  return {
    from: x(least),
    to: x(most),
    value: given === null ? null : x(given),
    isOutside: given !== null && (given < least || given > most),
  };
}
