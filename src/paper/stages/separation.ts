import type { Quantity } from '../../kernel/expression/quantity.ts';
import { type Component, componentLabels, flowOf } from '../components.ts';
import type { StageEntry } from '../catalogue.ts';
import { type Sheet, fraction } from '../sheet.ts';
import { cascadeSeparation } from './cascade-stage.ts';
import type { Separation } from './removal.ts';
import type { StagePlace } from './stage-place.ts';
import { washerRemoval } from './washer-stage.ts';

/** How a stage separates: as a cascade of screens or cleaners, as a washer, or by a removal that is given for each component. */
export function separationOf(sheet: Sheet, place: StagePlace, entry: StageEntry): Separation {
  if (entry.cascade !== undefined) return cascadeSeparation(sheet, place, entry);
  const { washer } = entry;
  const removal =
    washer === undefined
      ? flowOf((component) => givenRemoval(sheet, place, entry, component))
      : washerRemoval(sheet, place, washer);
  return { removal, cascade: null };
}

function givenRemoval(sheet: Sheet, place: StagePlace, entry: StageEntry, component: Component): Quantity {
  return sheet.optional({
    id: `${place.id}.removal.${component}`,
    label: `${componentLabels[component]} removed`,
    where: place.where,
    unit: '1',
    entry: '%',
    figure: entry.removal?.[component],
    allowed: fraction,
  });
}
