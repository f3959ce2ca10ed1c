/**
 * The values below which the given shares (0 to 1) of the values lie: 0 gives the least, 1 the greatest, in between the straight line
 * between neighbours at place (n - 1) x share, counted from 0. The values stay as they are. A RangeError tells of no values or of a
 * share outside 0 to 1. Values that are no number or infinite have no place in an order: the caller leaves failed trials out.
 * Source: Hyndman and Fan, "Sample quantiles in statistical packages", The American Statistician 50 (1996) 361-365, definition 7.
 */
export function percentiles(values: Float64Array, shares: readonly number[]): number[] {
  if (values.length === 0) throw new RangeError('No values have no percentiles.');
  if (!shares.every((share) => share >= 0 && share <= 1)) throw new RangeError('A share lies between 0 and 1.');
  const last = values.length - 1;
  const lower = shares.map((share) => Math.floor(last * share));
  const wanted = [...new Set(lower.flatMap((place) => [place, Math.min(place + 1, last)]))].sort((a, b) => a - b);
  const ordered = Float64Array.from(values);
  settle(ordered, 0, last, wanted, 2 * Math.ceil(Math.log2(values.length + 1)));
  return shares.map((share, k) => {
    const place = lower[k]!;
    const below = ordered[place]!;
    const past = last * share - place;
    return past === 0 ? below : below + past * (ordered[place + 1]! - below);
  });
}

const fewValues = 24;

/**
 * Moves values about within [from, to] until each wanted place (rising) holds what a sort would put there. Halves that hold no wanted place
 * are left alone, so that a few places cost a few passes. Data made to defeat the choice of pivots end in a sort after `patience` cuts.
 */
function settle(values: Float64Array, from: number, to: number, wanted: readonly number[], patience: number): void {
  const inside = wanted.filter((place) => place >= from && place <= to);
  if (inside.length === 0) return;
  if (to - from < fewValues || patience === 0) {
    values.subarray(from, to + 1).sort();
    return;
  }
  const cut = partition(values, from, to);
  settle(values, from, cut, inside, patience - 1);
  settle(values, cut + 1, to, inside, patience - 1);
}

/**
 * Hoare's partition: afterwards nothing up to the returned place is above anything beyond it, and both sides hold something, because
 * another of the nine is no less than the pivot. Stopping at equals shares them out evenly, so many of them cost no more than others.
 */
function partition(values: Float64Array, from: number, to: number): number {
  const pivot = middleOfNine(values, from, to);
  let left = from - 1;
  let right = to + 1;
  for (;;) {
    do left += 1;
    while (values[left]! < pivot);
    do right -= 1;
    while (values[right]! > pivot);
    if (left >= right) return right;
    const held = values[left]!;
    values[left] = values[right]!;
    values[right] = held;
  }
}

/** The median of three medians of three, spread over the range, so that ordered data are cut in the middle. */
function middleOfNine(values: Float64Array, from: number, to: number): number {
  const step = (to - from) >>> 3;
  const middleAt = (first: number): number => middle(values[first]!, values[first + step]!, values[first + 2 * step]!);
  return middle(middleAt(from), middleAt(from + 3 * step), middleAt(to - 2 * step));
}

function middle(one: number, two: number, three: number): number {
  return Math.max(Math.min(one, two), Math.min(Math.max(one, two), three));
}
