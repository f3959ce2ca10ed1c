import { type Quantity, constant } from '../../kernel/expression/quantity.ts';
import type { StageEntry } from '../catalogue.ts';
import { type Component, componentLabels, flowOf, followsWater } from '../components.ts';
import { plainFigure } from '../figure.ts';
import { type Sheet, fraction } from '../sheet.ts';
import { cascade, quotientRemoval } from './cascade.ts';
import type { StagePlace } from './stage-place.ts';
import { filtrateLoss, waterRemoved } from './washing.ts';

/** The share of each component that leaves a stage, 0 where nothing does. */
export type Removal = Readonly<Record<Component, Quantity>>;

export function removalOf(sheet: Sheet, place: StagePlace, entry: StageEntry): Removal {
  if (entry.cascade !== undefined) return cascadeRemoval(sheet, place, entry, entry.cascade);
  if (entry.washer !== undefined) return washerRemoval(sheet, place, entry.washer);
  return flowOf((component) =>
    sheet.optional({
      id: `${place.id}.removal.${component}`,
      label: `${componentLabels[component]} removed`,
      where: place.where,
      unit: '1',
      entry: '%',
      figure: entry.removal?.[component],
      allowed: fraction,
    }),
  );
}

const betweenNoneAndAll = { above: '0', below: '100' } as const;

function cascadeRemoval(
  sheet: Sheet,
  place: StagePlace,
  entry: StageEntry,
  defaults: NonNullable<StageEntry['cascade']>,
): Removal {
  const where = place.where;
  const levels = place.stage.levels ?? Number(defaults.stages.value);
  const rate = sheet.input({
    id: `${place.id}.rejectRate`,
    label: 'Reject rate of fibre, each stage',
    where,
    unit: '1',
    figure: defaults.rejectRate,
    allowed: betweenNoneAndAll,
  });
  const thickening = sheet.input({
    id: `${place.id}.thickening`,
    label: 'Reject thickening factor',
    where,
    unit: '1',
    figure: defaults.thickening,
    allowed: { above: '0' },
  });
  const consistency = sheet.input({
    id: `${place.id}.consistency`,
    label: 'Feed consistency',
    where,
    unit: '1',
    figure: entry.consistency,
    allowed: betweenNoneAndAll,
  });
  // A reject that is thicker than pure solids, or more water rejected than fed, cannot be: the figures contradict one another.
  sheet.define(
    `${place.id}.rejectConsistency`,
    'Reject consistency of the first stage',
    '1',
    thickening.times(consistency).within({ most: '1' }),
    { where, shownIn: '%' },
  );
  const byVolume = sheet.define(
    `${place.id}.volumeRejectRate`,
    'Reject rate by volume, each stage',
    '1',
    rate.dividedBy(thickening).within({ below: '1' }),
    {
      where,
      note: 'Mass reject rate of the fibre divided by the reject thickening factor.',
      shownIn: '%',
    },
  );
  const losses = new Map<Quantity, Quantity>();
  const lossAt = (single: Quantity, name: string, label: string): Quantity => {
    const known = losses.get(single);
    if (known !== undefined) return known;
    const loss = sheet.define(
      `${place.id}.loss.${name}`,
      `${label}, share that leaves the cascade`,
      '1',
      cascade(Array.from({ length: levels }, () => single)).loss,
      { where, shownIn: '%' },
    );
    losses.set(single, loss);
    return loss;
  };
  return flowOf((component) => {
    const quotient = {
      id: `${place.id}.quotient.${component}`,
      label: `${componentLabels[component]}: separation quotient`,
      where,
      unit: '1',
      figure: defaults.quotient[component],
      allowed: { below: '1' },
    };
    if (sheet.has(quotient))
      return lossAt(quotientRemoval(rate, sheet.input(quotient)), component, componentLabels[component]);
    return followsWater.has(component)
      ? lossAt(byVolume, 'water', 'What follows the water')
      : lossAt(rate, 'fibre', 'Fibre and what follows it');
  });
}

function washerRemoval(sheet: Sheet, place: StagePlace, defaults: NonNullable<StageEntry['washer']>): Removal {
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
    const passage = sheet.optional({
      id: `${place.id}.passage.${component}`,
      label: `${componentLabels[component]} that passes with the water`,
      where,
      unit: '1',
      entry: '%',
      figure: defaults.passage[component],
      allowed: fraction,
    });
    const passed = passage.times(water);
    if (filtrate !== 'clarifier' || defaults.passage[component] === undefined)
      return filtrateLoss(filtrate, passed, constant('0'));
    const caught = sheet.input({
      id: `${place.id}.catch.${component}`,
      label: `${componentLabels[component]} caught by the clarifier`,
      where,
      unit: '1',
      figure: defaults.catch[component] ?? defaults.catch.default ?? plainFigure('0', '0', '100', '%'),
      allowed: fraction,
    });
    return filtrateLoss(filtrate, passed, caught);
  });
}
