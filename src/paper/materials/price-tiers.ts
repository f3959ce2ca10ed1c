import type { Case, Material } from '../../case/case.ts';
import { type Quantity, constant, total } from '../../kernel/expression/quantity.ts';
import { type Sheet, positive } from '../sheet.ts';

/** A price that rises (or falls) with the tonnage: so much at this price, and what is bought beyond it at the next. */
export interface PriceTier {
  /** Tonnes a year, on the basis of the price. */
  readonly tonnes: Quantity;
  readonly price: Quantity;
}

const mostTiers = 12;

export const tieredTonnesIdOf = (materialId: string): string => `material.${materialId}.tieredTonnes`;

/** The tiers of a material, as many as figures are given for: material.x.tier.1.tonnes and material.x.tier.1.price and so on. None is usual. */
export function priceTiersOf(
  sheet: Sheet,
  { id: materialId, label: where }: Material,
  { unit, basis, foreign }: { readonly unit: string; readonly basis: string; readonly foreign: boolean },
): readonly PriceTier[] {
  const id = (place: number, what: 'tonnes' | 'price'): string =>
    `material.${materialId}.tier.${String(place)}.${what}`;
  const places = Array.from({ length: mostTiers }, (_, place) => place + 1);
  const last = Math.max(
    0,
    ...places.filter((place) => sheet.isGiven(id(place, 'tonnes')) || sheet.isGiven(id(place, 'price'))),
  );
  const tiers = places.slice(0, last).map((place): PriceTier => ({
    tonnes: sheet.input({
      id: id(place, 'tonnes'),
      label: `Tier ${String(place)}: tonnes a year`,
      where,
      unit: `${basis}/a`,
      allowed: positive,
    }),
    price: sheet.input({ id: id(place, 'price'), label: `Tier ${String(place)}: price`, where, unit, foreign }),
  }));
  if (last > 0)
    sheet.define(tieredTonnesIdOf(materialId), 'Tonnes a year that the tiers hold', `${basis}/a`, sumOf(tiers, basis), {
      where,
    });
  return tiers;
}

/** Average price of a tonnage; beyond the last tier the price of the last one goes on. Of nothing it is that of the first tonne. */
export function averagePrice(tiers: readonly PriceTier[], tonnage: Quantity, basis: string): Quantity {
  const none = constant('0', `${basis}/a`);
  const parts = tiers.map(({ tonnes, price }, place) => {
    const beyond = tonnage.minus(sumOf(tiers.slice(0, place), basis)).greaterOf(none);
    return price.times(place === tiers.length - 1 ? beyond : beyond.lesserOf(tonnes));
  });
  const first = tiers[0]!.price;
  return tonnage.whenAbove(none, total(parts, parts[0]!.unit).dividedBy(tonnage), first);
}

/** Price of the last tonne of a tonnage: what one more or one less is worth. */
export function marginalPrice(tiers: readonly PriceTier[], tonnage: Quantity, basis: string): Quantity {
  const [first, ...others] = tiers;
  return others.reduce(
    (below, { price }, place) => tonnage.whenAbove(sumOf(tiers.slice(0, place + 1), basis), price, below),
    first!.price,
  );
}

/** The route whose tonnage sets the price that stands for the material itself: of the two that are compared the second, if it buys any. */
export function leadingBuyer({ routes, compare }: Case, materialId: string): string | null {
  const buyers = routes.filter(({ lines }) =>
    lines.some(({ recipe }) => recipe.some(({ material }) => material === materialId)),
  );
  const has = (id: string): boolean => buyers.some((route) => route.id === id);
  return [compare.with, compare.base].find(has) ?? buyers[0]?.id ?? null;
}

function sumOf(tiers: readonly PriceTier[], basis: string): Quantity {
  return total(
    tiers.map(({ tonnes }) => tonnes),
    `${basis}/a`,
  );
}
