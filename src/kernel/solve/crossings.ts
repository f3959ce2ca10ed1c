/** Where a curve meets nothing: each crossing, from left to right. */
export type Curve = (at: number) => number;

const scanned = 200;
const halvings = 100;

/**
 * All places in [low, high] where a curve changes its sign or touches nothing, found by a scan of 200 steps and narrowed by bisection to the
 * last bit. A curve that turns twice within one step can hide a pair of crossings; stretches where it is no number are passed over.
 */
export function crossings(curve: Curve, low: number, high: number): readonly number[] {
  const found: number[] = [];
  let left = low;
  let leftValue = curve(low);
  if (leftValue === 0) found.push(low);
  for (let step = 1; step <= scanned; step += 1) {
    const right = step === scanned ? high : low + ((high - low) * step) / scanned;
    const rightValue = curve(right);
    if (rightValue === 0) found.push(right);
    else if (leftValue * rightValue < 0) {
      const root = bisected(curve, left, right, leftValue);
      if (root !== null) found.push(root);
    }
    left = right;
    leftValue = rightValue;
  }
  return found;
}

/** Narrows a change of sign; null where the curve jumps over nothing instead of passing through it. */
function bisected(curve: Curve, low: number, high: number, lowValue: number): number | null {
  let [left, right, leftValue] = [low, high, lowValue];
  for (let step = 0; step < halvings; step += 1) {
    const middle = left + (right - left) / 2;
    if (middle === left || middle === right) break;
    const value = curve(middle);
    if (value === 0) return middle;
    if (Number.isNaN(value)) return null;
    if (leftValue * value < 0) right = middle;
    else [left, leftValue] = [middle, value];
  }
  const jump = Math.abs(curve(right) - curve(left));
  const size = Math.max(Math.abs(curve(low)), Math.abs(curve(high)));
  return jump > size * 1e-3 ? null : left + (right - left) / 2;
}
