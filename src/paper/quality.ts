import { type Quantity, constant, total } from '../kernel/expression/quantity.ts';
import type { Plant } from './plant.ts';
import { brightnessOf } from './brightness.ts';
import { limitIdOf, qualities, qualityIdOf } from './quality-ids.ts';
import { type Sheet, notNegative } from './sheet.ts';

/** What a disperger hides stays in the product: specks and stickies of all lines, kg/t, beside the limits of the case. */
export function qualityOf(sheet: Sheet, plant: Plant): void {
  const { route, lines } = plant;
  const where = route.label;
  const carried = (component: 'inkLarge' | 'macroStickies'): Quantity =>
    total(
      lines.map((line) => line.accepts[component]),
      'bdt/t',
    ).times(constant('1000', 'kg/bdt'));
  const define = (quality: 'dirt' | 'macroStickies', quantity: Quantity): void => {
    const label = qualities.find(({ id }) => id === quality)?.label ?? quality;
    sheet.define(qualityIdOf(route.id, quality), label, 'kg/t', quantity, {
      where,
      note: 'What all lines bring to the blend chest.',
    });
  };
  define('dirt', carried('inkLarge'));
  define('macroStickies', carried('macroStickies'));
  brightnessOf(sheet, plant);
  for (const { id, limit, unit } of qualities) {
    sheet.optional({
      id: limitIdOf(route.id, id),
      label: limit,
      where,
      unit: unit === '%' ? '1' : unit,
      entry: unit,
      allowed: notNegative,
    });
  }
}
