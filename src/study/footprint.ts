import { gridAttribution } from '../paper/carbon-factors.ts';
import { basisOf } from '../paper/footprint/basis.ts';
import { carbonDifferenceId, marginalPowerId } from '../paper/footprint/carbon-difference.ts';
import { contractScopeIdOf } from '../paper/footprint/contract-power.ts';
import { scopeIdOf, scopes } from '../paper/footprint/footprint.ts';
import type { Footprint } from './footprint-result.ts';
import type { OpenCase } from './open-case.ts';
import { namedAmount, routeFootprint } from './route-footprint.ts';

/** Landfill, energy, carbon, water and recycled content of every route. */
export function footprint(open: OpenCase): Footprint {
  const { content, values, model } = open;
  const routes = model.routes.map((route) => routeFootprint(open, route));
  const { base, with: other } = content.compare;
  return {
    currency: content.currency,
    tonnesPerYear: values.number('product.tonnes'),
    basis: { ...basisOf(content.basis), allocation: 'cut-off', attribution: gridAttribution },
    allocationView: allocationView(open),
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

function allocationView({ content, values }: OpenCase): Footprint['allocationView'] {
  const ids = ['carbon.freeAllocation', ...content.routes.map(({ id }) => `${id}.freeAllocation`)];
  const isAny = ids.some((id) => values.has(id) && values.number(id) > 0);
  return isAny ? (content.carbonPrice?.view ?? 'cash') : null;
}
