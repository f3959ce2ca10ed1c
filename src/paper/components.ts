import { type Quantity, constant, total } from '../kernel/expression/quantity.ts';

/** What stock is made of. Ink by size: under 10 um, 10 to 100 um, over 100 um; stickies above and below the slot of a laboratory screen. */
export const components = [
  'fibre',
  'fines',
  'ash',
  'inkSmall',
  'inkMid',
  'inkLarge',
  'macroStickies',
  'microStickies',
  'lights',
  'heavies',
  'wire',
  'wetStrength',
  'dissolved',
] as const;

export type Component = (typeof components)[number];

export const componentLabels: Readonly<Record<Component, string>> = {
  fibre: 'Fibre',
  fines: 'Fines',
  ash: 'Ash',
  inkSmall: 'Ink under 10 µm',
  inkMid: 'Ink 10 to 100 µm',
  inkLarge: 'Ink over 100 µm',
  macroStickies: 'Macro-stickies',
  microStickies: 'Micro-stickies',
  lights: 'Film and foam',
  heavies: 'Sand, glass and metal',
  wire: 'Bale wire',
  wetStrength: 'Wet-strength paper',
  dissolved: 'Dissolved matter',
};

/** Components that pass with the water, and so leave a screen or cleaner at the volumetric reject ratio. */
export const followsWater: ReadonlySet<Component> = new Set(['fines', 'ash', 'inkSmall', 'microStickies', 'dissolved']);

/** What counts as fibre in a fibre yield, on both sides. */
export const fibrous: readonly Component[] = ['fibre', 'fines', 'wetStrength'];

/** Mass of each component, all in one unit. */
export type Flow = Readonly<Record<Component, Quantity>>;

export function flowOf(of: (component: Component) => Quantity): Flow {
  return Object.fromEntries(components.map((component) => [component, of(component)])) as unknown as Flow;
}

export function noFlow(unit: string): Flow {
  return flowOf(() => constant('0', unit));
}

export function addFlows(flows: readonly Flow[], unit: string): Flow {
  return flowOf((component) =>
    total(
      flows.map((flow) => flow[component]),
      unit,
    ),
  );
}

export function scaleFlow(flow: Flow, factor: Quantity): Flow {
  return flowOf((component) => flow[component].times(factor));
}

export function massOf(flow: Flow, of: readonly Component[] = components): Quantity {
  return total(
    of.map((component) => flow[component]),
    flow.fibre.unit,
  );
}
