import { positiveRoots } from './positive-roots.ts';

export interface InternalRates {
  /** Rates per year as shares, ascending, each once. */
  readonly rates: readonly { readonly rate: number; readonly isMeaningless: boolean }[];
  /** Every rate is one, for there are no flows. */
  readonly always: boolean;
}

const meaninglessBelow = -0.99;

/**
 * All real rates above -100 % at which the present value of yearly flows is nothing, the first flow undiscounted: none, one or several,
 * zero and double roots included. Below -99 % they are called meaningless. Flows are one money; their size and noughts at either end change
 * nothing.
 *
 * Present value is a polynomial in x = 1/(1 + rate), whose positive roots are isolated one by one, not scanned for. Each is exact to about
 * 1e-12 of (1 + rate), unless it lies so near another that the last digits of the flows decide it; rates that rounding cannot tell apart,
 * two within about 1e-7, are one. A rate so near -100 % that no number stands between them is left out. Throws on flows that are no finite
 * numbers: "no rate" would be a false answer.
 */
export function internalRates(flows: readonly number[]): InternalRates {
  if (!flows.every(Number.isFinite)) throw new RangeError('internalRates takes finite flows only');
  const rates = positiveRoots(flows)
    .toReversed()
    .map(rateOf)
    .filter((rate) => rate > -1 && Number.isFinite(rate))
    .map((rate) => ({ rate, isMeaningless: rate < meaninglessBelow }));
  return { rates, always: flows.every((flow) => flow === 0) };
}

/** One over x loses what lies below the last digit of 1: a rate no larger than that is nothing. */
function rateOf(x: number): number {
  const rate = 1 / x - 1;
  return Math.abs(rate) < 1e-15 ? 0 : rate;
}
