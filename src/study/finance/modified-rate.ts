import { presentValue } from './present-value.ts';

/**
 * Modified internal rate of return per year as a share: what returns grow to by the last year at the reinvestment rate, over what outlays
 * are worth at the start at the finance rate, to the power 1/n, less one; n is the number of flows less one, so that noughts at the end
 * count as years. Null where there are no outlays or no returns; no number (NaN) at a rate of -100 % or less, or where a flow is none.
 * Source: function MIRR, Microsoft Support, Excel function reference, undated.
 */
export function modifiedRate(flows: readonly number[], financeRate: number, reinvestmentRate: number): number | null {
  const outlays = flows.map((flow) => Math.max(-flow, 0));
  const returns = flows.map((flow) => Math.max(flow, 0));
  if ([outlays, returns].some((side) => side.every((each) => each === 0))) return null;
  const growth = presentValue(returns, reinvestmentRate) / presentValue(outlays, financeRate);
  return growth ** (1 / (flows.length - 1)) * (1 + reinvestmentRate) - 1;
}
