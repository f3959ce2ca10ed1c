import type { Quantity } from '../../kernel/expression/quantity.ts';
import { type Component, componentLabels, flowOf } from '../components.ts';
import type { StageEntry } from '../catalogue.ts';
import { type Sheet, fraction } from '../sheet.ts';
import { cascadeRemoval } from './cascade-stage.ts';
import type { Removal } from './removal.ts';
import type { StagePlace } from './stage-place.ts';
import { washerRemoval } from './washer-stage.ts';

/** How a stage separates: as a cascade of screens or cleaners, as a washer, or by a removal that is given for each component. */
export function removalOf(sheet: Sheet, place: StagePlace, entry: StageEntry): Removal {
  if (entry.cascade !== undefined) return cascadeRemoval(sheet, place, entry);
  if (entry.washer !== undefined) return washerRemoval(sheet, place, entry.washer);
  return flowOf((component) => givenRemoval(sheet, place, entry, component));
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
