import type { RouteKind } from '../case/route-kind.ts';
import type { Status } from '../kernel/graph/input-declaration.ts';
import type { Scope } from '../paper/footprint/cause.ts';
import type { WasteCode } from '../paper/waste-codes.ts';
import type { UsedEnergy } from './energy-use.ts';

/** A factor of some cause, with what must stand beside it. */
export interface FactorUsed {
  readonly id: string;
  readonly label: string;
  readonly value: string;
  readonly unit: string;
  readonly year: string;
  readonly boundary: string;
  /** "" where it is not known, as of a figure that was given without it. */
  readonly allocation: string;
  readonly gwp: string;
  readonly status: Status;
  readonly source: string;
}

/** kgCO2e per tonne of product. */
export interface CauseAmount {
  readonly id: string;
  readonly label: string;
  readonly scope: Scope;
  readonly amount: number;
  readonly quantityId: string;
  readonly factors: readonly FactorUsed[];
}

/** Masses in tonnes per tonne of product: dry bone-dry, wet as hauled. */
export interface StreamMass {
  readonly stream: string;
  readonly label: string;
  readonly dry: number;
  readonly wet: number;
  readonly quantityId: string;
  readonly dryId: string;
  /** Null where no code is usual and none is given. */
  readonly wasteCode: WasteCode | null;
  /** Of the way it goes, per tonne of product: money less what it earns and spares, kgCO2e less what it spares. */
  readonly cost: number;
  readonly costId: string;
  readonly carbon: number;
  readonly carbonId: string;
  /** The first takes what the others leave. */
  readonly parts: readonly {
    readonly destination: string;
    readonly label: string;
    readonly kind: string;
    readonly share: number;
    readonly wet: number;
    readonly dry: number;
    readonly quantityId: string;
  }[];
}

export interface RouteFootprint {
  readonly id: string;
  readonly label: string;
  readonly kind: RouteKind;
  readonly scopes: readonly { readonly scope: Scope; readonly amount: number; readonly quantityId: string }[];
  readonly causes: readonly CauseAmount[];
  readonly total: number;
  readonly totalId: string;
  /** Scope 2 by contract, where one is given: beside the sum. */
  readonly powerByContract: number | null;
  /** All of scope 2 with power by contract (market-based): in no sum. */
  readonly scope2ByContract: NamedAmount | null;
  /** kgCO2e/t of what is landfilled for one tonne. */
  readonly landfillMethane: {
    readonly allTime: number;
    readonly firstYear: number;
    readonly years20: number;
    readonly years100: number;
    readonly byYear: readonly number[];
  };
  /** kg CO2/t, beside the sum. */
  readonly biogenic: number;
  /** Fractions; `printable` is per cent rounded down, as a claim would be. */
  readonly recycled: {
    readonly content: number;
    readonly postConsumer: number;
    readonly preConsumer: number;
    readonly fibreOnly: number;
    readonly printable: number;
  };
  /** Solid cubic metres under bark per tonne. */
  readonly wood: number;
  readonly water: {
    readonly fresh: number;
    readonly withMaterials: number;
    readonly effluent: number;
    readonly elsewhere: number;
    /** Dissolved matter in the loop, mg/l. */
    readonly concentration: number;
    readonly concentrationId: string;
    readonly freshId: string;
    readonly effluentId: string;
  };
  readonly energy: readonly UsedEnergy[];
  readonly electricity: number;
  readonly heat: number;
  readonly heatFromResidues: number;
  readonly streams: readonly StreamMass[];
  readonly waste: WasteMass;
  /** kgCO2e/t, in no sum: the bought recovered paper through the same landfill. It lies outside the boundary. */
  readonly avoidedLandfill: { readonly amount: number; readonly quantityId: string };
}

/** kgCO2e/t, and the quantity it stands in. */
export interface NamedAmount {
  readonly amount: number;
  readonly quantityId: string;
}

/** All residues of a route, in tonnes per tonne of product. */
export interface WasteMass {
  readonly dry: number;
  readonly wet: number;
  readonly dryId: string;
  readonly wetId: string;
  readonly destinations: readonly (Omit<WasteMass, 'destinations'> & {
    readonly destination: string;
    readonly label: string;
    readonly kind: string;
  })[];
}

export interface Footprint {
  readonly currency: string;
  readonly tonnesPerYear: number;
  readonly basis: {
    readonly fuel: string;
    readonly grid: string;
    readonly gwp: string;
    readonly climate: string;
    readonly allocation: 'cut-off';
    readonly attribution: string;
  };
  /** How free allocation is seen in the statements; null where no route has any. */
  readonly allocationView: 'cash' | 'opportunity' | null;
  readonly routes: readonly RouteFootprint[];
  readonly difference: {
    readonly base: string;
    readonly with: string;
    readonly total: number;
    readonly scopes: readonly { readonly scope: Scope; readonly amount: number; readonly quantityId: string }[];
    readonly totalId: string;
    readonly scope2ByContract: NamedAmount | null;
    /** What the difference in power moves on the grid: the effect of a change, in no inventory. Null where no factor is known or given. */
    readonly marginalPower: NamedAmount | null;
  };
}
