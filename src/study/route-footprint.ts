import { kindOfLines } from '../case/route-kind.ts';
import { avoidedLandfillIdOf } from '../paper/footprint/avoided-landfill.ts';
import { contractPowerIdOf, contractScopeIdOf } from '../paper/footprint/contract-power.ts';
import { scopeIdOf, scopes } from '../paper/footprint/footprint.ts';
import { loopConcentrationIdOf } from '../paper/loop-concentration.ts';
import type { RouteModel } from '../paper/route.ts';
import { causeAmount } from './cause-amount.ts';
import { energyByUse } from './energy-use.ts';
import type { NamedAmount, RouteFootprint } from './footprint-result.ts';
import type { OpenCase } from './open-case.ts';
import { streamMasses, wasteMass } from './residue-masses.ts';
import { waterIdsOf } from './water-ids.ts';

/** Null where the case has no such quantity. */
export function namedAmount({ values }: OpenCase, quantityId: string): NamedAmount | null {
  return values.has(quantityId) ? { amount: values.number(quantityId), quantityId } : null;
}

/** Everything about one route. */
export function routeFootprint(open: OpenCase, route: RouteModel): RouteFootprint {
  const { values, content } = open;
  const { id, label, lines } = route.plant.route;
  const of = (name: string): number => values.number(`${id}.${name}`);
  const { freshId, effluentId } = waterIdsOf(route.plant.route.id);
  return {
    id,
    label,
    kind: kindOfLines(lines, content.materials),
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
      fresh: values.number(freshId),
      withMaterials: of('water.withMaterials'),
      effluent: values.number(effluentId),
      elsewhere: of('water.elsewhere'),
      concentration: values.number(loopConcentrationIdOf(id)),
      concentrationId: loopConcentrationIdOf(id),
      freshId,
      effluentId,
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

const yearsShown = 50;

/** What is let out in each year after one deposit: the share exp(-k (n - 1)) - exp(-k n) of all time. */
function methaneByYear(allTime: number, rate: number): readonly number[] {
  return Array.from({ length: yearsShown }, (_, n) => allTime * (Math.exp(-rate * n) - Math.exp(-rate * (n + 1))));
}
