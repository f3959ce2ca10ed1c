import type { Material } from '../../case/case.ts';
import type { Quantity } from '../../kernel/expression/quantity.ts';
import type { Plant } from '../plant.ts';
import type { Sheet } from '../sheet.ts';
import { averagePriceIdOf, boughtTonnageIdOf, marginalPriceIdOf } from './price-ids.ts';
import { averagePrice, marginalPrice } from './price-tiers.ts';
import type { Purchase } from './purchase.ts';

/**
 * What a route pays per bone-dry tonne of a material whose price goes by tiers: the average over all it buys, which is what the statement
 * counts. What the last tonne costs stands beside it, for that is what a lot more or less is worth.
 */
export function tieredCost(
  sheet: Sheet,
  { route, mill }: Plant,
  material: Material,
  purchase: Purchase,
  bought: Quantity,
): Quantity {
  const { tiers, basis, priceUnit, tonnesPerDry, costAt } = purchase;
  const where = `${route.label}, ${material.label}`;
  const tonnage = sheet.define(
    boughtTonnageIdOf(route.id, material.id),
    'Bought a year, as it counts towards the tiers',
    `${basis}/a`,
    bought.times(tonnesPerDry).times(mill.tonnes),
    { where, note: 'Bone-dry mass bought a tonne of product, as the tonne of the price, times the tonnes a year.' },
  );
  const price = (id: string, label: string, quantity: Quantity, note: string): Quantity =>
    sheet.define(id, label, priceUnit, quantity, { where, note, foreign: true });
  const average = price(
    averagePriceIdOf(route.id, material.id),
    'Average price over the tiers',
    averagePrice(tiers, tonnage, basis),
    'Each tier at its price; beyond the last the last price goes on.',
  );
  const marginal = price(
    marginalPriceIdOf(route.id, material.id),
    'Price of the last tonne',
    marginalPrice(tiers, tonnage, basis),
    'The price of the tier in which the tonnage ends.',
  );
  sheet.define(
    `${route.id}.bought.${material.id}.marginalCost`,
    'Paid per bone-dry tonne, for the last tonne',
    `EUR/bdt`,
    costAt(marginal),
    { where, note: 'Net of the price of the last tonne, times the payable tonnes per bone-dry tonne.' },
  );
  return sheet.define(
    `${route.id}.bought.${material.id}.cost`,
    'Paid per bone-dry tonne, on average',
    'EUR/bdt',
    costAt(average),
    { where, note: 'Net of the average price, times the payable tonnes per bone-dry tonne.' },
  );
}
