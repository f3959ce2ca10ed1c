import type { ComponentMass } from '../../../src/index.ts';

export type Component = ComponentMass['component'];

interface ComponentWords {
  readonly short: string;
  /** Inside a sentence, where the short name would not do. */
  readonly within?: string;
  /** What makes the bulk of the stock is drawn to one scale, dirt to a larger one. */
  readonly group: 'bulk' | 'dirt';
}

/**
 * Components from the top of the picture to its foot. What usually leaves first lies lowest, so that little has to cross what goes on;
 * the two kinds of stickies and the three sizes of ink are neighbours, because a disperser moves them from one to the next.
 */
export const componentWords: Readonly<Record<Component, ComponentWords>> = {
  dissolved: { short: 'Dissolved', group: 'bulk' },
  ash: { short: 'Ash', group: 'bulk' },
  fines: { short: 'Fines', group: 'bulk' },
  fibre: { short: 'Fibre', group: 'bulk' },
  inkSmall: { short: 'Ink, small', within: 'small ink', group: 'dirt' },
  inkMid: { short: 'Ink, middle', within: 'middle ink', group: 'dirt' },
  inkLarge: { short: 'Ink, large', within: 'large ink', group: 'dirt' },
  microStickies: { short: 'Micro-stickies', group: 'dirt' },
  macroStickies: { short: 'Macro-stickies', group: 'dirt' },
  wetStrength: { short: 'Wet-strength', within: 'wet-strength paper', group: 'dirt' },
  lights: { short: 'Film, foam', group: 'dirt' },
  heavies: { short: 'Sand, metal', group: 'dirt' },
  wire: { short: 'Bale wire', group: 'dirt' },
};

export const componentOrder = Object.keys(componentWords) as readonly Component[];
