/** What a tonne of product costs by the price of a lot: `atNothing` at price 0, and so much more for each unit of money above or below. */
export interface PriceSlope {
  readonly atNothing: number;
  /** Payable tonnes per tonne of product for a price, and tonnes as weighed for a fee that is received. */
  readonly above: number;
  readonly below: number;
}

/** The cost of a tonne of product at a price. */
export function costAt({ atNothing, above, below }: PriceSlope, price: number): number {
  return atNothing + price * (price > 0 ? above : below);
}

/**
 * The price at which a tonne of product costs as much as it may: (alternative - cost at price 0)/(payable tonnes per tonne of product), exact on
 * each side of zero, since a fee is settled as weighed. NaN where nothing of the lot is paid for.
 */
export function priceAt({ atNothing, above, below }: PriceSlope, cost: number): number {
  const left = cost - atNothing;
  const tonnes = left > 0 ? above : below;
  return tonnes > 0 ? left / tonnes : NaN;
}
