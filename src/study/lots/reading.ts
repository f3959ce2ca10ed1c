import { studentWithin95 } from './student.ts';

/** What readings of one lot say of it, in the unit of the readings. */
export interface Reading {
  readonly mean: number;
  readonly count: number;
  /** Standard deviation of the readings; null for fewer than two. */
  readonly deviation: number | null;
  /** Ends of the 95 % interval of the mean by Student's t, kept within 0 and 100; null for fewer than two readings. */
  readonly low: number | null;
  readonly high: number | null;
  /** How many further readings would halve the interval, if they spread as these do; null where there is none to halve. */
  readonly toHalve: number | null;
  /** Whether anybody read it at all, or it is what is usual. */
  readonly isGiven: boolean;
}

/** Readings in per cent. One reading has no interval: how far it may be off, nothing tells. */
export function readingOf(values: readonly number[]): Reading {
  const count = values.length;
  const mean = values.reduce((sum, value) => sum + value, 0) / count;
  if (count < 2) return { ...usualReading(mean), count, isGiven: true };
  const squares = values.reduce((sum, value) => sum + (value - mean) ** 2, 0);
  const deviation = Math.sqrt(squares / (count - 1));
  const half = halfWidth(deviation, count);
  return {
    mean,
    count,
    deviation,
    low: Math.max(0, mean - half),
    high: Math.min(100, mean + half),
    toHalve: half === 0 ? null : countFor(deviation, half / 2, count) - count,
    isGiven: true,
  };
}

export function usualReading(mean: number): Reading {
  return { mean, count: 0, deviation: null, low: null, high: null, toHalve: null, isGiven: false };
}

function halfWidth(deviation: number, count: number): number {
  return (studentWithin95(count - 1) * deviation) / Math.sqrt(count);
}

/** The least number of readings whose interval is no wider: more readings always make it narrower, so halving finds it. */
function countFor(deviation: number, half: number, least: number): number {
  let [few, enough] = [least, 4 * least + 1];
  while (enough - few > 1) {
    const middle = Math.floor((few + enough) / 2);
    if (halfWidth(deviation, middle) > half) few = middle;
    else enough = middle;
  }
  return enough;
}
