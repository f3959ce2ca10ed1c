import { percentiles } from '../../kernel/random/percentiles.ts';

/** Counts of trials in bins of equal width, nothing being an edge. What lies beyond the outermost thousandths is counted in the end bins. */
export interface Histogram {
  readonly from: number;
  readonly width: number;
  readonly counts: readonly number[];
}

const wantedBins = 50;
const tail = 0.001;

export function histogramOf(values: Float64Array): Histogram {
  if (values.length === 0) return { from: 0, width: 1, counts: [] };
  const [low = 0, high = 0] = percentiles(values, [tail, 1 - tail]);
  const width = roundWidth((high - low) / wantedBins, Math.max(Math.abs(low), Math.abs(high)));
  const first = Math.floor(low / width);
  const bins = Math.max(1, Math.floor(high / width) - first + 1);
  const counts = new Array<number>(bins).fill(0);
  for (const value of values) {
    const bin = Math.min(bins - 1, Math.max(0, Math.floor(value / width) - first));
    counts[bin]! += 1;
  }
  return { from: first * width, width, counts };
}

/** 1, 2 or 5 times a power of ten, at least as wide as wanted: edges stay round numbers. */
function roundWidth(wanted: number, size: number): number {
  // Trials that all come to the same fill one bin of a visible width.
  const least = Math.max(wanted, size * 1e-9, Number.MIN_VALUE * 1e20);
  const power = 10 ** Math.floor(Math.log10(least));
  const times = [1, 2, 5, 10].find((each) => each * power >= least) ?? 10;
  return times * power;
}
