/**
 * Years until the money is back for good, counted from the year of the first flow that is not nothing: the last time the running sum turns
 * from below nothing to nothing or more, in a straight line within the year. Flows one money a year, the first undiscounted; with a rate
 * per year (a share) each is discounted before it is summed. Null where the sum is below nothing at the end; 0 where it never is. What
 * rounding alone can leave of a sum counts as nothing. No number (NaN) at a rate of -100 % or less, or where a flow is none. Source:
 * payback period, worked example, calcdomain.com, undated, for the straight line; the last turn is our own rule: an earlier one is not for
 * good.
 */
export function payback(flows: readonly number[], rate = 0): number | null {
  if (!(rate > -1)) return NaN;
  const first = flows.findIndex((flow) => flow !== 0);
  let [sum, size, back]: [number, number, number | null] = [0, 0, 0];
  for (let year = 0; year < flows.length; year += 1) {
    const flow = flows[year]! / (1 + rate) ** year;
    const before = sum;
    sum += flow;
    size += Math.abs(flow);
    if (Math.abs(sum) <= (year + 1) * 2 ** -51 * size) sum = 0;
    if (sum < 0) back = null;
    else if (before < 0) back = year - 1 - first - before / (sum - before);
  }
  return Number.isNaN(sum) ? NaN : back;
}
