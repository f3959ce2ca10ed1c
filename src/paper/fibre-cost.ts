import { type Quantity, total } from '../kernel/expression/quantity.ts';
import { averagePriceIdOf } from './materials/price-ids.ts';
import { tieredCost } from './materials/tiered-cost.ts';
import type { Plant } from './plant.ts';
import type { Sheet } from './sheet.ts';
import type { LineSpec } from './statement-writer.ts';

/** Bought fibre by material, over all lines that use it, and its freight. */
export function fibreLines(sheet: Sheet, plant: Plant): readonly LineSpec[] {
  const { route, lines, mill } = plant;
  return sheet.case.materials.flatMap((material): LineSpec[] => {
    const feeds = lines.flatMap((line) =>
      line.grades.filter((grade) => grade.material === material.id).map((grade) => line.feed.times(grade.share)),
    );
    const purchase = mill.purchases.get(material.id);
    if (feeds.length === 0 || purchase === undefined) return [];
    const where = `${route.label}, ${material.label}`;
    const bought = sheet.define(
      `${route.id}.bought.${material.id}`,
      'Bought, bone-dry',
      'bdt/t',
      total(feeds, 'bdt/t'),
      { where, note: 'Dry feed of the lines that use it.' },
    );
    sheet.define(
      `${route.id}.received.${material.id}`,
      'Bought, as received',
      't-ar/t',
      bought.times(purchase.received),
      { where, note: 'Bone-dry mass over what is not moisture.' },
    );
    const isTiered = purchase.tiers.length > 0;
    const price = isTiered ? tieredCost(sheet, plant, material, purchase, bought) : purchase.price;
    const money = (quantity: Quantity) => bought.times(quantity);
    return [
      {
        account: 'fibre',
        key: material.id,
        label: material.label,
        amount: money(price),
        driverId: isTiered ? averagePriceIdOf(route.id, material.id) : purchase.priceInput,
        note: 'Bone-dry tonnes bought times what each costs ex works.',
      },
      {
        account: 'freight',
        key: material.id,
        label: `Freight, ${lowerFirst(material.label)}`,
        amount: money(purchase.freight),
        driverId: purchase.freightInput,
        note: 'Bone-dry tonnes bought times freight and handling.',
      },
    ];
  });
}

/** "Mixed papers" within a sentence is "mixed papers"; an abbreviation such as "OCC" stays. */
function lowerFirst(text: string): string {
  return /^\p{Lu}\p{Lu}/u.test(text) ? text : text.charAt(0).toLowerCase() + text.slice(1);
}
