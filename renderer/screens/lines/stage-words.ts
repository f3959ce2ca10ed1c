import type { StageBalance, StageChoice } from '../../../src/index.ts';

type StageKind = StageChoice['kind'];

interface StageWords {
  readonly verb: string;
  /** Short enough for the head of a narrow column. */
  readonly kind: string;
}

const stageWords: Readonly<Record<StageKind, StageWords>> = {
  'slushing pulper': { verb: 'Slush', kind: 'Slushing pulper' },
  'vat pulper': { verb: 'Pulp', kind: 'Vat pulper' },
  'drum pulper': { verb: 'Pulp', kind: 'Drum pulper' },
  'broke pulper': { verb: 'Pulp', kind: 'Broke pulper' },
  detrashing: { verb: 'Clean', kind: 'Detrashing' },
  'high-density cleaner': { verb: 'Clean', kind: 'High density' },
  'coarse screen': { verb: 'Screen', kind: 'Coarse screen' },
  'fine screen': { verb: 'Screen', kind: 'Fine screen' },
  'forward cleaner': { verb: 'Clean', kind: 'Forward cleaner' },
  'lightweight cleaner': { verb: 'Clean', kind: 'Lightweight' },
  'flotation cell': { verb: 'Float', kind: 'Flotation cell' },
  washer: { verb: 'Wash', kind: 'Washer' },
  thickener: { verb: 'Thicken', kind: 'Thickener, press' },
  disperser: { verb: 'Disperse', kind: 'Disperser' },
  refiner: { verb: 'Refine', kind: 'Refiner' },
  'bleaching tower': { verb: 'Bleach', kind: 'Bleaching tower' },
  pumps: { verb: 'Pump', kind: 'Pumps, agitators' },
};

/** The words for a stage as it stands in the balance, whose kind is any string to the compiler. */
export function wordsOf({ kind, label }: Pick<StageBalance, 'kind' | 'label'>): StageWords {
  const words = Object.entries(stageWords).find(([known]) => known === kind)?.[1];
  return words ?? { verb: 'Treat', kind: label };
}

/** What the same verb does, for a list to choose from: all pulpers together, all screens together. */
export function byVerb(choices: readonly StageChoice[]): readonly (readonly [string, readonly StageChoice[]])[] {
  const groups = new Map<string, StageChoice[]>();
  for (const choice of choices) {
    const { verb } = stageWords[choice.kind];
    groups.set(verb, [...(groups.get(verb) ?? []), choice]);
  }
  return [...groups];
}

// Stages of the program's list that share a label and differ in what they are for.
const apart: Readonly<Record<string, string>> = {
  flot1: 'flotation cell, first',
  flot2: 'flotation cell, second',
  disc: 'thickener, disc filter',
  press: 'screw or wire press',
  bleach: 'bleaching tower, peroxide',
  'fas-stage': 'bleaching tower, reductive',
  'refiner-sw': 'refiner for softwood',
  'refiner-hw': 'refiner for hardwood',
  'clean-virgin': 'screen and cleaner for pulp',
};

export function choiceLabel({ like, label }: Pick<StageChoice, 'like' | 'label'>): string {
  return apart[like] ?? label;
}
