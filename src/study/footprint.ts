import type { Status } from '../kernel/graph/input-declaration.ts';
import { inForce } from '../kernel/graph/input-declaration.ts';
import { gridAttribution } from '../paper/carbon-factors.ts';
import { carbonDifferenceId, marginalPowerId } from '../paper/footprint/carbon-difference.ts';
import { factOf } from '../paper/footprint/carbon-inputs.ts';
import { basisOf } from '../paper/footprint/basis.ts';
import { contractPowerIdOf, contractScopeIdOf } from '../paper/footprint/contract-power.ts';
import type { Scope } from '../paper/footprint/cause.ts';
import { type ReportedCause, scopeIdOf, scopes } from '../paper/footprint/footprint.ts';
import type { RouteModel } from '../paper/route.ts';
import { avoidedLandfillIdOf } from '../paper/footprint/avoided-landfill.ts';
import { streamCarbonIdOf, streamCostIdOf } from '../paper/footprint/residue-choice.ts';
import { wasteIdOf } from '../paper/footprint/waste-sums.ts';
import { type UsedEnergy, energyByUse } from './energy-use.ts';
import type { OpenCase } from './open-case.ts';

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
  readonly kind: 'virgin' | 'recovered';
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

/** Landfill, energy, carbon, water and recycled content of every route. */
export function footprint(open: OpenCase): Footprint {
  const { content, values, model } = open;
  const routes = model.routes.map((route) => routeFootprint(open, route));
  const { base, with: other } = content.compare;
  return {
    currency: content.currency,
    tonnesPerYear: values.number('product.tonnes'),
    basis: { ...basisOf(content.basis), allocation: 'cut-off', attribution: gridAttribution },
    routes,
    difference: {
      base,
      with: other,
      total: values.number(carbonDifferenceId),
      totalId: carbonDifferenceId,
      scopes: scopes.map((scope) => ({
        scope,
        amount: values.number(scopeIdOf('difference', scope)),
        quantityId: scopeIdOf('difference', scope),
      })),
      scope2ByContract: namedAmount(open, contractScopeIdOf('difference')),
      marginalPower: namedAmount(open, marginalPowerId),
    },
  };
}

/** Null where the case has no such quantity. */
function namedAmount({ values }: OpenCase, quantityId: string): NamedAmount | null {
  return values.has(quantityId) ? { amount: values.number(quantityId), quantityId } : null;
}

function routeFootprint(open: OpenCase, route: RouteModel): RouteFootprint {
  const { values, content } = open;
  const { id, label, lines, water } = route.plant.route;
  const of = (name: string): number => values.number(`${id}.${name}`);
  const origins = new Map(content.materials.map((material) => [material.id, material.origin]));
  const isRecovered = lines.some((line) => line.recipe.some((grade) => origins.get(grade.material) !== 'virgin'));
  const isEffluentGiven = water === 'effluent given';
  const freshName = isEffluentGiven ? 'water.fresh' : 'machine.freshWater';
  const effluentName = isEffluentGiven ? 'effluent' : 'water.effluent';
  return {
    id,
    label,
    kind: isRecovered ? 'recovered' : 'virgin',
    scopes: scopes.map((scope) => ({
      scope,
      quantityId: scopeIdOf(id, scope),
      amount: values.number(scopeIdOf(id, scope)),
    })),
    causes: route.causes.map((cause) => causeAmount(open, cause)),
    total: of('footprint.total'),
    totalId: `${id}.footprint.total`,
    powerByContract: namedAmount(open, contractPowerIdOf(id))?.amount ?? null,
    scope2ByContract: namedAmount(open, contractScopeIdOf(id)),
    landfillMethane: {
      allTime: of('landfill.methane'),
      firstYear: of('landfill.methane.1'),
      years20: of('landfill.methane.20'),
      years100: of('landfill.methane.100'),
      byYear: methaneByYear(of('landfill.methane'), values.number('landfill.k')),
    },
    biogenic: of('footprint.biogenic'),
    recycled: {
      content: of('recycled.content'),
      postConsumer: of('recycled.postConsumer'),
      preConsumer: of('recycled.preConsumer'),
      fibreOnly: of('recycled.fibreOnly'),
      printable: Math.floor(of('recycled.content') * 100 + 1e-9),
    },
    wood: of('wood'),
    water: {
      fresh: of(freshName),
      withMaterials: of('water.withMaterials'),
      effluent: of(effluentName),
      elsewhere: of('water.elsewhere'),
      freshId: `${id}.${freshName}`,
      effluentId: `${id}.${effluentName}`,
    },
    energy: energyByUse(open, id),
    electricity: of('electricity.total'),
    heat: of('heat.total'),
    heatFromResidues: of('heat.fromResidues'),
    streams: streamMasses(open, route),
    waste: wasteMass(open, id),
    avoidedLandfill: { amount: values.number(avoidedLandfillIdOf(id)), quantityId: avoidedLandfillIdOf(id) },
  };
}

function causeAmount({ model, values }: OpenCase, { factorIds, ...cause }: ReportedCause): CauseAmount {
  const inputs = new Map(model.graph.inputs.map((input) => [input.id, input]));
  const factors = factorIds.flatMap((id): FactorUsed[] => {
    const input = inputs.get(id);
    if (input === undefined) return [];
    const provenance = input.given?.provenance ?? input.usual.provenance;
    return [
      {
        id,
        label: input.label,
        value: inForce(input) ?? '',
        unit: input.entryUnit,
        year: factOf(input, 'year'),
        boundary: input.usual.provenance.details?.['boundary'] ?? '',
        allocation: factOf(input, 'allocation'),
        gwp: factOf(input, 'gwp'),
        status: provenance.status,
        source: provenance.source,
      },
    ];
  });
  return { ...cause, amount: values.number(cause.quantityId), factors };
}

function streamMasses({ values }: OpenCase, { plant, residues }: RouteModel): readonly StreamMass[] {
  return residues.map(({ stream, label, parts }) => {
    const id = `${plant.route.id}.residue.${stream}`;
    const [dry, wet] = [values.number(`${id}.dry`), values.number(`${id}.wet`)];
    const split = parts.map(({ destination }) => {
      const quantityId = `${id}.wet.${destination.id}`;
      const there = values.number(quantityId);
      const share = wet === 0 ? 0 : there / wet;
      return {
        destination: destination.id,
        label: destination.label,
        kind: destination.kind,
        share,
        wet: there,
        dry: dry * share,
        quantityId,
      };
    });
    const [costId, carbonId] = [streamCostIdOf(plant.route.id, stream), streamCarbonIdOf(plant.route.id, stream)];
    const [cost, carbon] = [values.number(costId), values.number(carbonId)];
    const ids = { quantityId: `${id}.wet`, dryId: `${id}.dry`, costId, carbonId };
    return { stream, label, dry, wet, cost, carbon, ...ids, parts: split };
  });
}

function wasteMass({ values, content }: OpenCase, routeId: string): WasteMass {
  const mass = (destination?: string) => {
    const [dryId, wetId] = [wasteIdOf(routeId, 'dry', destination), wasteIdOf(routeId, 'wet', destination)];
    return { dry: values.number(dryId), wet: values.number(wetId), dryId, wetId };
  };
  const destinations = content.destinations.map(({ id, label, kind }) => ({
    destination: id,
    label,
    kind,
    ...mass(id),
  }));
  return { ...mass(), destinations };
}

const yearsShown = 50;

/** What is let out in each year after one deposit: the share exp(-k (n - 1)) - exp(-k n) of all time. */
function methaneByYear(allTime: number, rate: number): readonly number[] {
  return Array.from({ length: yearsShown }, (_, n) => allTime * (Math.exp(-rate * n) - Math.exp(-rate * (n + 1))));
}
