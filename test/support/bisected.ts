/**
 * The place between `low` and `high` where a function is nothing. The two ends must lie on different sides of it: without a change of
 * sign there is no root to find, and that is an error of the test.
 */
export function bisected(low: number, high: number, at: (place: number) => number): number {
  const [atLow, atHigh] = [at(low), at(high)];
  if (!(atLow * atHigh < 0))
    throw new Error(`No change of sign: ${String(atLow)} at one end, ${String(atHigh)} at the other`);
  let [left, right] = [low, high];
  // Sixty halvings leave less than the spacing of floating-point numbers.
  for (let step = 0; step < 60; step += 1) {
    const middle = (left + right) / 2;
    if (at(middle) * atLow > 0) left = middle;
    else right = middle;
  }
  return (left + right) / 2;
}
