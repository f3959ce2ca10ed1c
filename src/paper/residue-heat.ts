import { type Quantity, constant, total } from '../kernel/expression/quantity.ts';
import { fossilCarbon as fossilFigures, heatingValues } from './catalogue.ts';
import { type Component, type Flow, addFlows, components, flowOf, massOf } from './components.ts';
import type { Figure } from './figure.ts';
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

/**
 * Heat as fired of a residue of dryness d, per wet tonne: NCV_dry d - 2.443 (1 - d) GJ, with 2.443 GJ/t the heat of vaporisation of
 * water at 25 C. Reckoned here per dry tonne, from the dry and the wet mass.
 */
export function heatOfResidue(sheet: Sheet, { route }: Plant, residues: readonly Residue[]): BurnedResidues {
  const burning = residues.flatMap((residue) => {
    const flow = burnedFlow(residue);
    return flow === null ? [] : [{ residue, flow }];
  });
  const heats = burning.flatMap(({ residue, flow }) => {
    const dryHeat = total(
      components.map((component) => flow[component].times(heatingValue(sheet, component))),
      'GJ/t',
    );
    return residue.parts
      .filter((part) => part.destination.kind === 'own boiler')
      .map((part) => {
        const water = part.wet.times(constant('1', 'm3/wet-t')).minus(massOf(flow).times(constant('1', 'm3/bdt')));
        const fired = dryHeat.minus(water.times(constant('2.443', 'GJ/m3')));
        return sheet.define(
          `${route.id}.residue.${residue.stream}.heat`,
          `${residue.label}, useful heat`,
          'GJ/t',
          fired.times(part.terms.efficiency),
          { where: route.label, note: 'Net calorific value as fired times the boiler\u2019s efficiency.' },
        );
      });
  });
  const flows = addFlows(
    burning.map(({ flow }) => flow),
    'bdt/t',
  );
  const fossil = components.map((component) => flows[component].times(fossilOf(sheet, component)));
  const minerals = new Set<Component>(['ash', 'heavies', 'wire']);
  return {
    heat: total(heats, 'GJ/t'),
    ash: flowOf((component) => (minerals.has(component) ? flows[component] : constant('0', 'bdt/t'))),
    fossilCarbon: total(fossil, 'tCO2/t').times(constant('1000', 'kgCO2e/tCO2')),
  };
}

function heatingValue(sheet: Sheet, component: Component): Quantity {
  const kind = heatingClass[component];
  if (kind === undefined) return constant('0', 'GJ/bdt');
  return byClass(
    sheet,
    `heatingValue.${kind}`,
    `Net calorific value, dry, of ${classLabels[kind]}`,
    'GJ/bdt',
    heatingValues[kind],
  );
}

function fossilOf(sheet: Sheet, component: Component): Quantity {
  const kind = fossilClass[component];
  if (kind === undefined) return constant('0', 'tCO2/bdt');
  return byClass(
    sheet,
    `fossilCarbon.${kind}`,
    `Fossil CO2 from burning ${classLabels[kind]}`,
    'tCO2/bdt',
    fossilFigures[kind],
  );
}

function byClass(sheet: Sheet, id: string, label: string, unit: string, figure: Figure): Quantity {
  return sheet.input({ id, label, unit, figure, allowed: notNegative });
}
