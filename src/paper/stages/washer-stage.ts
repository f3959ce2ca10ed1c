import { constant } from '../../kernel/expression/quantity.ts';
import type { StageEntry } from '../catalogue.ts';
import { componentLabels, flowOf } from '../components.ts';
import { plainFigure } from '../figure.ts';
import { type Sheet, fraction } from '../sheet.ts';
import type { Removal } from './removal.ts';
import type { StagePlace } from './stage-place.ts';
import { filtrateLoss, waterRemoved } from './washing.ts';

const betweenNoneAndAll = { above: '0', below: '100' } as const;

/** Removal of a washer or thickener: what passes with the water, less what its clarifier or its loop gives back. */
export function washerRemoval(sheet: Sheet, place: StagePlace, defaults: NonNullable<StageEntry['washer']>): Removal {
  const where = place.where;
  const filtrate = place.stage.filtrate ?? 'clarifier';
  const inlet = sheet.input({
    id: `${place.id}.consistencyIn`,
    label: 'Consistency in',
    where,
    unit: '1',
    figure: defaults.consistencyIn,
    allowed: betweenNoneAndAll,
  });
  const outlet = sheet.input({
    id: `${place.id}.consistencyOut`,
    label: 'Consistency out',
    where,
    unit: '1',
    figure: defaults.consistencyOut,
    allowed: betweenNoneAndAll,
  });
  const water = sheet.define(
    `${place.id}.waterRemoved`,
    'Share of the water removed',
    '1',
    waterRemoved(inlet, outlet).within({ least: '0' }),
    { where, shownIn: '%' },
  );
  return flowOf((component) => {
    const label = componentLabels[component];
    const passage = {
      id: `${place.id}.passage.${component}`,
      label: `${label} that passes with the water`,
      where,
      unit: '1',
      entry: '%',
      figure: defaults.passage[component],
      allowed: fraction,
    } as const;
    if (!sheet.has(passage)) return constant('0');
    const passed = sheet.input(passage).times(water);
    if (filtrate !== 'clarifier') return filtrateLoss(filtrate, passed, constant('0'));
    const usual = defaults.catch[component] ?? defaults.catch.default ?? plainFigure('0', '0', '100', '%');
    const caught = sheet.input({
      id: `${place.id}.catch.${component}`,
      label: `${label} caught by the clarifier`,
      where,
      unit: '1',
      figure: usual,
      allowed: fraction,
    });
    return filtrateLoss(filtrate, passed, caught);
  });
}
