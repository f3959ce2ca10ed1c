import { type Quantity, constant, total } from '../kernel/expression/quantity.ts';
import { fossilCarbon as fossilFigures, heatingValues } from './catalogue.ts';
import { type Component, type Flow, addFlows, components, flowOf } from './components.ts';
import { type Figure, plainFigure } from './figure.ts';
import { asFactor } from './footprint/factor-input.ts';
import type { Plant } from './plant.ts';
import { type Residue, burnedFlow } from './residue.ts';
import { type Sheet, notNegative } from './sheet.ts';
import { selfSustainingFire } from './usual-results.ts';

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

/** What is left of a residue that is burned. */
export const mineral: ReadonlySet<Component> = new Set(['ash', 'heavies', 'wire']);

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
 * water at 25 C. Reckoned here for the whole stream, from its dry mass and its water. A fire that does not keep itself is brought up to
 * that point with other fuel; what the boiler loses of that fuel is charged to the residue.
 */
function usefulHeat(sheet: Sheet, { route }: Plant, residue: Residue): Quantity {
  const id = `${route.id}.residue.${residue.stream}`;
  const define = (name: string, label: string, unit: string, quantity: Quantity, note: string): Quantity =>
    sheet.define(`${id}.${name}`, `${residue.label}, ${label}`, unit, quantity, { where: route.label, note });
  const water = residue.wet.times(constant('1', 'm3/wet-t')).minus(residue.dry.times(constant('1', 'm3/bdt')));
  const fired = define(
    'firedHeat',
    'heat as fired',
    'GJ/t',
    dryHeatOf(sheet, residue).minus(water.times(constant('2.443', 'GJ/m3'))),
    'Net calorific value of the dry matter, less the heat that its water takes to evaporate.',
  );
  const nothing = constant('0', 'GJ/wet-t');
  const value = residue.wet.whenAbove(constant('0', 'wet-t/t'), fired.dividedBy(residue.wet), nothing);
  define('firedValue', 'calorific value as fired', 'GJ/wet-t', value, 'Heat as fired over wet tonnes.');
  const keepsItself = sheet.input({
    id: 'boiler.selfSustaining',
    label: 'Calorific value at which a residue burns by itself',
    unit: 'GJ/wet-t',
    figure: plainFigure(String(selfSustainingFire), '3.5', '5.5', 'GJ/wet-t'),
    allowed: notNegative,
  });
  const support = define(
    'supportHeat',
    'fuel to keep it burning',
    'GJ/t',
    residue.wet.times(keepsItself).minus(fired).greaterOf(constant('0', 'GJ/t')),
    'What is missing to the calorific value at which it burns by itself.',
  );
  const burned = residue.parts
    .filter((part) => part.destination.kind === 'own boiler')
    .map(({ share, terms }) =>
      fired.times(terms.efficiency).minus(support.times(terms.efficiency.complement())).times(share),
    );
  return define(
    'heat',
    'useful heat',
    'GJ/t',
    total(burned, 'GJ/t'),
    'Heat as fired times the efficiency of burning it, less what is lost of the fuel that keeps it burning, for the share that is burned.',
  );
}

/** By components, or by a value of the stream's own where the case gives one. */
function dryHeatOf(sheet: Sheet, residue: Residue): Quantity {
  const own = {
    id: `residue.${residue.stream}.heatingValue`,
    label: `${residue.label}: net calorific value, dry`,
    unit: 'GJ/bdt',
    allowed: notNegative,
  };
  if (sheet.has(own)) return residue.dry.times(sheet.input(own));
  const parts = components.map((component) => residue.composition[component].times(heatingValue(sheet, component)));
  return total(parts, 'GJ/t');
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
