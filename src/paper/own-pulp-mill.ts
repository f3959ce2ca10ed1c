import type { Route } from '../case/case.ts';
import { type Quantity, constant, total } from '../kernel/expression/quantity.ts';
import type { Plant } from './plant.ts';
import { type InputSpec, type Sheet, notNegative } from './sheet.ts';
import type { LineSpec } from './statement-writer.ts';
import { usedMaterials } from './used-materials.ts';

/** What a pulp mill of one's own hands over with a bone-dry tonne of its pulp. */
interface OwnMillSpecs {
  readonly material: string;
  readonly heat: InputSpec;
  readonly power: InputSpec;
}

/** For each virgin material that a route uses. Nothing is handed over until somebody says so. */
export function ownMillSpecs(sheet: Sheet, route: Route): readonly OwnMillSpecs[] {
  return usedMaterials(sheet, route)
    .filter(({ origin }) => origin === 'virgin')
    .map(({ id, label }) => {
      const spec = (name: string, words: string, unit: string): InputSpec => ({
        id: `material.${id}.ownMill.${name}`,
        label: words,
        where: label,
        unit,
        allowed: notNegative,
      });
      return {
        material: id,
        heat: spec('heat', 'Heat that the own pulp mill hands over with its pulp', 'GJ/bdt'),
        power: spec('electricity', 'Electricity that the own pulp mill hands over with its pulp', 'kWh/bdt'),
      };
    });
}

/** Energy that comes with pulp of the own mill and need not be bought, per tonne of product; nothing where none comes. */
export interface OwnMillEnergy {
  readonly heat: Quantity;
  readonly power: Quantity;
}

/**
 * A pulp mill on the same site hands steam and power to the paper machine. A route that replaces its pulp goes without and buys them, so
 * that a route can use at most what it needs: what is left over is not sold. The pulp's own carbon factor holds the carbon of its mill.
 */
export function ownMillEnergy(sheet: Sheet, { route }: Plant, heatLacking: Quantity): OwnMillEnergy {
  const specs = ownMillSpecs(sheet, route);
  const brought = (kind: 'heat' | 'power', unit: string): Quantity =>
    total(
      specs
        .filter((each) => sheet.has(each[kind]))
        .map((each) =>
          sheet.graph.later(`${route.id}.bought.${each.material}`, 'bdt/t').times(sheet.input(each[kind])),
        ),
      unit,
    );
  const used = (id: string, label: string, unit: string, offered: Quantity, needed: Quantity): Quantity =>
    offered.operation.op === 'constant'
      ? constant('0', unit)
      : sheet.define(`${route.id}.${id}.fromOwnMill`, label, unit, offered.lesserOf(needed), {
          where: route.label,
          note: 'What comes with the pulp of the own mill, at most what is needed.',
        });
  return {
    heat: used('heat', 'Heat from the own pulp mill', 'GJ/t', brought('heat', 'GJ/t'), heatLacking),
    power: used(
      'electricity',
      'Electricity from the own pulp mill',
      'kWh/t',
      brought('power', 'kWh/t'),
      sheet.graph.later(`${route.id}.electricity.total`, 'kWh/t'),
    ),
  };
}

/** What comes with the pulp of the own mill, at the prices of what it takes the place of. */
export function ownMillLines(
  { route }: Plant,
  { heat, power }: OwnMillEnergy,
  prices: { readonly heat: Quantity; readonly electricity: Quantity },
): readonly LineSpec[] {
  const line = (key: string, label: string, used: Quantity, price: Quantity, driverId: string): readonly LineSpec[] => {
    const worth = used.times(price);
    if (used.operation.op === 'constant') return [];
    const amount = constant('0', worth.unit).minus(worth);
    const note = 'What comes with the pulp times the price of what it takes the place of, as a credit.';
    return [{ account: 'credits', key, label, amount, driverId, note }];
  };
  return [
    ...line('ownMillHeat', 'Heat from the pulp mill', heat, prices.heat, `${route.id}.heat.fromOwnMill`),
    ...line(
      'ownMillPower',
      'Power from the pulp mill',
      power,
      prices.electricity,
      `${route.id}.electricity.fromOwnMill`,
    ),
  ];
}
