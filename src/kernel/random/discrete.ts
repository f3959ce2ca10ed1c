import type { Family } from './family.ts';
import { normalQuantile } from './normal.ts';

type Weighted = readonly { value: number; weight: number }[];

/** A few values with weights. A draw is the least value whose weight, with all below it, reaches the share at the score. */
export function discrete(values: Weighted): Family {
  if (values.some(({ value, weight }) => !Number.isFinite(value) || !Number.isFinite(weight) || weight < 0))
    throw new RangeError('The values and weights of a distribution must be finite, and no weight negative.');
  const rising = values.filter(({ weight }) => weight > 0).sort((one, other) => one.value - other.value);
  const total = sum(rising.map(({ weight }) => weight));
  if (total === 0) throw new RangeError('A distribution of single values needs a positive weight.');
  const mean = sum(rising.map(({ value, weight }) => value * (weight / total)));
  return {
    sampler: () => steps(rising, total),
    mean: () => mean,
    deviation: () => Math.sqrt(sum(rising.map(({ value, weight }) => (value - mean) ** 2 * (weight / total)))),
  };
}

/** The shares become scores once, so that a draw only compares. */
function steps(rising: Weighted, total: number): (score: number) => number {
  const figures = Float64Array.from(rising, ({ value }) => value);
  const tops = Float64Array.from(rising.slice(1), (_, place) => topScore(rising, place, total));
  return (score) => {
    let low = 0;
    let high = tops.length;
    while (low < high) {
      const middle = (low + high) >>> 1;
      if (score <= tops[middle]!) high = middle;
      else low = middle + 1;
    }
    return figures[low]!;
  };
}

/** The greatest score that still draws the value at this place, from the smaller of the two sides. */
function topScore(rising: Weighted, place: number, total: number): number {
  const below = sum(rising.slice(0, place + 1).map(({ weight }) => weight));
  const above = sum(rising.slice(place + 1).map(({ weight }) => weight));
  return below <= above ? normalQuantile(below / total) : -normalQuantile(above / total);
}

function sum(numbers: readonly number[]): number {
  return numbers.reduce((total, number) => total + number, 0);
}
