import type { Additive } from '../case/case.ts';
import { type Quantity, constant, total } from '../kernel/expression/quantity.ts';
import { plainFigure } from './figure.ts';
import type { Plant } from './plant.ts';
import { type Sheet, fraction, notNegative } from './sheet.ts';

/** One additive's use in a route: filler, starch, coating. */
export interface AdditiveUse {
  readonly id: string;
  readonly label: string;
  readonly kind: Additive['kind'];
  /** Bone-dry, bdt/t. */
  readonly amount: Quantity;
  /** Money per kg dry. */
  readonly price: Quantity;
}

/** Splits what the machine adds at the wet end and at the surface over the additives of the route; the first of each place takes the rest. */
export function additiveUses(sheet: Sheet, plant: Plant): readonly AdditiveUse[] {
  return (['wet end', 'surface'] as const).flatMap((place) => {
    const there = plant.route.additives.filter((additive) => additive.place === place);
    const mass = place === 'wet end' ? plant.machine.wetEndAdditives : plant.machine.surfaceAdditives;
    return there.map((additive, index) =>
      additiveUse(sheet, plant, additive, mass.times(shareOf(sheet, plant, there, index))),
    );
  });
}

function shareOf(sheet: Sheet, { route }: Plant, there: readonly Additive[], index: number): Quantity {
  const given = (additive: Additive): Quantity =>
    sheet.input({
      id: `${route.id}.additive.${additive.id}.share`,
      label: `${additive.label}: share of what is added at the ${additive.place}`,
      where: route.label,
      unit: '1',
      entry: '%',
      allowed: fraction,
    });
  const [first, ...others] = there;
  if (index > 0) return given(there[index] ?? there[0] ?? { id: '', label: '', place: 'wet end', kind: 'organic' });
  return first === undefined || others.length === 0
    ? constant('1')
    : total(others.map(given), '1').complement().within({ least: '0' });
}

function additiveUse(sheet: Sheet, { route }: Plant, additive: Additive, mass: Quantity): AdditiveUse {
  const amount = sheet.define(`${route.id}.additive.${additive.id}`, additive.label, 'bdt/t', mass, {
    where: route.label,
  });
  const figure =
    additive.kind === 'mineral'
      ? plainFigure('0.15', '0.08', '0.3', 'EUR/kg')
      : plainFigure('0.7', '0.45', '1.1', 'EUR/kg');
  const price = sheet.input({
    id: `additive.${additive.id}.price`,
    label: `${additive.label}, dry`,
    unit: 'EUR/kg',
    figure,
    allowed: notNegative,
  });
  return { id: additive.id, label: additive.label, kind: additive.kind, amount, price };
}
