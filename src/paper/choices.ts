import type { Origin } from '../case/case.ts';
import { type GridRegion, carbonFactor, gridRegions } from './carbon-factors.ts';
import { namesUnder } from './catalogue-problems.ts';
import { type StageKind, materialEntries, stageEntries } from './catalogue.ts';

/** A stage that can be put into a train. */
export interface StageChoice {
  readonly like: string;
  readonly label: string;
  readonly kind: StageKind;
  /** Whether it is a cascade, a washer, or separates by figures given for each component. */
  readonly separates: 'cascade' | 'washer' | 'given';
}

/** A grade of the program's list that can be bought. */
export interface MaterialChoice {
  readonly id: string;
  readonly label: string;
  readonly group: string;
  readonly origin: Origin;
}

/** The general stages of the program's list; those changed for one product are left to the templates. */
export function stageChoices(): readonly StageChoice[] {
  return [...stageEntries].flatMap(([like, entry]): StageChoice[] => {
    if (like.includes('/')) return [];
    const separates = entry.cascade !== undefined ? 'cascade' : entry.washer !== undefined ? 'washer' : 'given';
    return [{ like, label: entry.label, kind: entry.kind, separates }];
  });
}

export function materialChoices(): readonly MaterialChoice[] {
  return [...materialEntries].map(([id, { label, group, origin }]) => ({ id, label, group, origin }));
}

/** What a footprint can rest on. */
export interface BasisChoices {
  readonly fuels: readonly BasisChoice[];
  readonly grids: readonly GridRegion[];
  readonly gwps: readonly ('AR4' | 'AR5' | 'AR6')[];
  readonly climates: readonly BasisChoice[];
}

export interface BasisChoice {
  readonly key: string;
  readonly name: string;
}

export function basisChoices(): BasisChoices {
  // "Natural gas, burned" and "Rate of decay of paper, tropical, dry" are factors; here their fuel and their climate are meant.
  const fuels = namesUnder('fuel', 'use').map((key) => ({
    key,
    name: carbonFactor(`fuel.${key}.use`).label.replace(/, burned$/u, ''),
  }));
  const climates = namesUnder('landfill.k').map((key) => ({
    key,
    name: carbonFactor(`landfill.k.${key}`).label.replace(/^Rate of decay of paper, /u, ''),
  }));
  return { fuels, grids: gridRegions(), gwps: ['AR4', 'AR5', 'AR6'], climates };
}
