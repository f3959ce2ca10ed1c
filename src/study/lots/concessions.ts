import type { Concession } from './priced-lot.ts';
import { type PriceSlope, costAt, priceAt } from './walk-away.ts';
import { type Worked, priceNow } from './worked-lot.ts';

/**
 * What a concession is worth: by how much the price asked would have to fall for a tonne of product to cost the same with one point more
 * moisture, one point more unusable material, or ten kilometres more; and what one unit of money on the price comes to.
 */
export function concessions(worked: Worked): readonly Concession[] {
  const { terms, mean, moister, dirtier, product } = worked;
  const now = priceNow(terms);
  const changed = (what: Concession['what'], slope: PriceSlope): Concession => {
    const more = costAt(slope, now) - worked.cost;
    return { what, price: (now - priceAt(slope, worked.cost)) / terms.creditLeft, product: more, lot: more * product };
  };
  const one = terms.creditLeft * (now > 0 ? mean.slope.above : mean.slope.below);
  const farther = 10 * terms.freightPerKilometre * mean.feed * mean.received;
  return [
    changed('moisture', moister),
    changed('unusable', dirtier),
    ...(farther > 0 ? [changed('distance', { ...mean.slope, atNothing: mean.slope.atNothing + farther })] : []),
    { what: 'price', price: 1, product: one, lot: one * product },
  ];
}
