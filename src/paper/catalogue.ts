import type { Origin, PriceBasis } from '../case/case.ts';
import type { Component } from './components.ts';
import chemicalRows from './defaults/chemicals.json' with { type: 'json' };
import factorRows from './defaults/factors.json' with { type: 'json' };
import machineChemicalRows from './defaults/machine-chemicals.json' with { type: 'json' };
import machineRows from './defaults/machines.json' with { type: 'json' };
import materialRows from './defaults/materials.json' with { type: 'json' };
import residueRows from './defaults/residues.json' with { type: 'json' };
import variantRows from './defaults/stage-variants.json' with { type: 'json' };
import stageRows from './defaults/stages.json' with { type: 'json' };
import templateRows from './defaults/templates.json' with { type: 'json' };
import type { Figure } from './figure.ts';

/** The program's own list of materials, stages, machines and so on: where every default comes from. */
export interface MaterialEntry {
  readonly label: string;
  readonly group: string;
  readonly origin: Origin;
  readonly composition: Partial<Record<Component, Figure>>;
  readonly moisture: Figure;
  readonly price: Figure;
  /** kgCO2e/adt from cradle to gate; only virgin pulp has one. */
  readonly carbon?: Figure;
  readonly wood?: Figure;
  readonly priceBasis: PriceBasis;
}

export type StageKind =
  | 'slushing pulper'
  | 'vat pulper'
  | 'drum pulper'
  | 'broke pulper'
  | 'detrashing'
  | 'high-density cleaner'
  | 'coarse screen'
  | 'fine screen'
  | 'forward cleaner'
  | 'lightweight cleaner'
  | 'flotation cell'
  | 'washer'
  | 'thickener'
  | 'disperser'
  | 'refiner'
  | 'bleaching tower'
  | 'pumps';

export interface StageEntry {
  readonly kind: StageKind;
  readonly label: string;
  readonly electricity: Figure;
  readonly net?: Figure;
  readonly consistency: Figure;
  readonly temperature: Figure;
  readonly stream?: string;
  readonly streams?: Partial<Record<Component, string>>;
  readonly removal?: Partial<Record<Component, Figure>>;
  readonly cascade?: {
    readonly stages: Figure;
    readonly rejectRate: Figure;
    readonly thickening: Figure;
    readonly quotient: Partial<Record<Component, Figure>>;
  };
  readonly washer?: {
    readonly consistencyIn: Figure;
    readonly consistencyOut: Figure;
    readonly passage: Partial<Record<Component, Figure>>;
    readonly catch: Partial<Record<Component | 'default', Figure>>;
  };
  readonly heat?:
    { readonly given: Figure } | { readonly consistency: Figure; readonly from: Figure; readonly to: Figure };
  readonly transforms?: readonly { readonly from: Component; readonly to: Component; readonly fraction: Figure }[];
  readonly doses?: Readonly<Record<string, Figure>>;
}

export interface ResidueEntry {
  readonly label: string;
  readonly dryness: Figure;
  readonly split: Readonly<Record<string, string>>;
  readonly polymer?: Figure;
}

export interface TemplateEntry {
  readonly id: string;
  readonly product: string;
  readonly route: string;
  readonly machine: string;
  readonly lines: readonly { readonly material: string; readonly share: Figure; readonly train: readonly string[] }[];
}

const table = <Entry>(rows: object): ReadonlyMap<string, Entry> => new Map(Object.entries(rows) as [string, Entry][]);

export const materialEntries = table<MaterialEntry>(materialRows);
export const machineEntries = table<Readonly<Record<string, Figure>>>(machineRows);
export const chemicalEntries = table<{
  readonly label: string;
  readonly price: Figure;
  readonly carbon: Figure;
  readonly strength?: Figure;
}>(chemicalRows);
export const machineDoses = table<Figure>(machineChemicalRows);
export const residueEntries = table<ResidueEntry>(residueRows);
export const templateEntries = templateRows as unknown as readonly TemplateEntry[];
export const stageEntries: ReadonlyMap<string, StageEntry> = new Map([...table<StageEntry>(stageRows), ...variants()]);

/** A factor or price that belongs to no material, stage or machine. */
export function factor(name: Exclude<keyof typeof factorRows, 'ncv-dry' | 'fossil-co2'>): Figure {
  return factorRows[name] as Figure;
}

export const heatingValues = factorRows['ncv-dry'] as Readonly<Record<keyof (typeof factorRows)['ncv-dry'], Figure>>;
export const fossilCarbon = factorRows['fossil-co2'] as Readonly<
  Record<keyof (typeof factorRows)['fossil-co2'], Figure>
>;

/** A variant is a stage with some figures changed for one product; everything else stays. */
function variants(): Map<string, StageEntry> {
  const stages = table<StageEntry>(stageRows);
  return new Map(
    Object.entries(variantRows).map(([id, { of, change }]) => [
      id,
      changed(stages.get(of) ?? {}, change) as StageEntry,
    ]),
  );
}

function changed(entry: object, change: object): object {
  const result = new Map<string, unknown>(Object.entries(entry));
  for (const [key, value] of Object.entries(change) as [string, unknown][]) {
    const before = result.get(key);
    const mergeable = isTable(value) && isTable(before) && !('value' in value);
    result.set(key, mergeable ? changed(before, value) : value);
  }
  return Object.fromEntries(result);
}

function isTable(value: unknown): value is object {
  return typeof value === 'object' && value !== null && !Array.isArray(value);
}
