import { type Quantity, constant, total } from '../kernel/expression/quantity.ts';
import { fossilCarbon as fossilFigures, heatingValues } from './catalogue.ts';
import { type Component, type Flow, addFlows, components, flowOf } from './components.ts';
import type { Figure } from './figure.ts';
import { asFactor } from './footprint/factor-input.ts';
import type { Plant } from './plant.ts';
import { type Residue, burnedFlow } from './residue.ts';
import { type Sheet, notNegative } from './sheet.ts';

export interface BurnedResidues {
  /** Useful heat, GJ/t; negative where the water takes more than the solids give. */
  readonly heat: Quantity;
  /** Minerals and metal that are left, bdt/t by component. */
  readonly ash: Flow;
  /** kgCO2e/t. */
  readonly fossilCarbon: Quantity;
}

type HeatingClass = keyof typeof heatingValues;
const heatingClass: Partial<Record<Component, HeatingClass>> = {
  fibre: 'fibre',
  fines: 'fibre',
  wetStrength: 'fibre',
  dissolved: 'dissolved',
  inkSmall: 'ink',
  inkMid: 'ink',
  inkLarge: 'ink',
  macroStickies: 'stickies',
  microStickies: 'stickies',
  lights: 'lights',
};
const fossilClass: Partial<Record<Component, keyof typeof fossilFigures>> = {
  inkSmall: 'ink',
  inkMid: 'ink',
  inkLarge: 'ink',
  macroStickies: 'stickies',
  microStickies: 'stickies',
  lights: 'lights',
};
const classLabels: Readonly<Record<HeatingClass, string>> = {
  fibre: 'fibre and fines',
  ink: 'ink',
  stickies: 'stickies',
  lights: 'film and foam',
  dissolved: 'dissolved matter',
};

const mineral: ReadonlySet<Component> = new Set(['ash', 'heavies', 'wire']);

/** Heat, ash and fossil carbon of what goes to the own boiler. */
export function heatOfResidue(sheet: Sheet, plant: Plant, residues: readonly Residue[]): BurnedResidues {
  const burning = residues.flatMap((residue) => {
    const flow = burnedFlow(residue);
    return flow === null ? [] : [{ residue, flow }];
  });
  const flows = addFlows(
    burning.map(({ flow }) => flow),
    'bdt/t',
  );
  const fossil = components.map((component) => flows[component].times(fossilOf(sheet, component)));
  return {
    heat: total(
      burning.map(({ residue }) => usefulHeat(sheet, plant, residue)),
      'GJ/t',
    ),
    ash: flowOf((component) => (mineral.has(component) ? flows[component] : constant('0', 'bdt/t'))),
    fossilCarbon: total(fossil, 'tCO2/t').times(constant('1000', 'kgCO2e/tCO2')),
  };
}

/**
 * Heat as fired of a residue of dryness d, per wet tonne: NCV_dry d - 2.443 (1 - d) GJ, with 2.443 GJ/t the heat of vaporisation of
 * water at 25 C. Reckoned here for the whole stream, from its dry mass and its water.
 */
function usefulHeat(sheet: Sheet, { route }: Plant, residue: Residue): Quantity {
  const id = `${route.id}.residue.${residue.stream}`;
  const where = route.label;
  const own = {
    id: `residue.${residue.stream}.heatingValue`,
    label: `${residue.label}: net calorific value, dry`,
    unit: 'GJ/bdt',
    allowed: notNegative,
  };
  const byComponent = total(
    components.map((component) => residue.composition[component].times(heatingValue(sheet, component))),
    'GJ/t',
  );
  const dryHeat = sheet.has(own) ? residue.dry.times(sheet.input(own)) : byComponent;
  const water = residue.wet.times(constant('1', 'm3/wet-t')).minus(residue.dry.times(constant('1', 'm3/bdt')));
  const fired = sheet.define(
    `${id}.firedHeat`,
    `${residue.label}, heat as fired`,
    'GJ/t',
    dryHeat.minus(water.times(constant('2.443', 'GJ/m3'))),
    {
      where,
      note: 'Net calorific value of the dry matter, less the heat that its water takes to evaporate.',
    },
  );
  sheet.define(
    `${id}.firedValue`,
    `${residue.label}, calorific value as fired`,
    'GJ/wet-t',
    fired.dividedBy(residue.wet),
    { where, note: 'Heat as fired over wet tonnes.' },
  );
  const burned = residue.parts
    .filter((part) => part.destination.kind === 'own boiler')
    .map((part) => part.share.times(part.terms.efficiency));
  return sheet.define(`${id}.heat`, `${residue.label}, useful heat`, 'GJ/t', fired.times(total(burned, '1')), {
    where,
    note: 'Heat as fired times the share that is burned and the efficiency of burning it.',
  });
}

function heatingValue(sheet: Sheet, component: Component): Quantity {
  const kind = heatingClass[component];
  if (kind === undefined) return constant('0', 'GJ/bdt');
  const label = `Net calorific value, dry, of ${classLabels[kind]}`;
  return byClass(sheet, `heatingValue.${kind}`, label, 'GJ/bdt', heatingValues[kind]);
}

export function fossilOf(sheet: Sheet, component: Component): Quantity {
  const kind = fossilClass[component];
  if (kind === undefined) return constant('0', 'tCO2/bdt');
  return byClass(
    sheet,
    `fossilCarbon.${kind}`,
    `Fossil CO2 from burning ${classLabels[kind]}`,
    'tCO2/bdt',
    asFactor(fossilFigures[kind], 'use of fuel'),
  );
}

function byClass(sheet: Sheet, id: string, label: string, unit: string, figure: Figure): Quantity {
  return sheet.input({ id, label, unit, figure, allowed: notNegative });
}
