import { type Quantity, constant, total } from '../kernel/expression/quantity.ts';
import type { Plant } from './plant.ts';
import { type Sheet, notNegative } from './sheet.ts';

/** What the product carries on from its stock, and the limit somebody set for it, if anybody did. */
export const qualities = [
  { id: 'ash', label: 'Ash of the product', limit: 'Ash, at most' },
  { id: 'dirt', label: 'Ink specks over 100 µm in the product', limit: 'Ink specks over 100 µm, at most' },
  { id: 'macroStickies', label: 'Macro-stickies in the product', limit: 'Macro-stickies, at most' },
] as const;

export type QualityId = (typeof qualities)[number]['id'];

export const qualityIdOf = (routeId: string, quality: QualityId): string =>
  quality === 'ash' ? `${routeId}.productAsh` : `${routeId}.product.${quality}`;
export const limitIdOf = (routeId: string, quality: QualityId): string => `${routeId}.limit.${quality}`;

/** What a disperger hides stays in the product: specks and stickies of all lines, kg/t, beside the limits of the case. */
export function qualityOf(sheet: Sheet, { route, lines }: Plant): void {
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
  for (const { id, limit } of qualities) {
    const share = id === 'ash';
    sheet.optional({
      id: limitIdOf(route.id, id),
      label: limit,
      where,
      unit: share ? '1' : 'kg/t',
      entry: share ? '%' : 'kg/t',
      allowed: notNegative,
    });
  }
}
