/**
 * What yearly flows are worth at the start: the first flow undiscounted, each later one divided by (1 + rate) for every year it waits.
 * Flows in one money (or tonnes), the rate per year as a share (0.08 for 8 %), real for flows at constant prices and nominal for flows in
 * money of the day. No number (NaN) at -100 % and below, where waiting has no price. Source: numpy-financial, documentation of npv, which
 * counts the years from nothing; the function NPV of spreadsheets divides all of it by one year more.
 */
export function presentValue(flows: readonly number[], rate: number): number {
  if (!(rate > -1)) return NaN;
  return flows.reduceRight((later, flow) => later / (1 + rate) + flow, 0);
}
