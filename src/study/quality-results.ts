import { dissolvedLoadIdOf, loopConcentrationIdOf } from '../paper/loop-concentration.ts';
import { limitIdOf, qualities, qualityIdOf } from '../paper/quality-ids.ts';
import {
  proposedServiceIdOf,
  strengthFactorIdOf,
  strengthIndexIdOf,
  strengthProperties,
} from '../paper/strength-properties.ts';
import { nodeNamed } from '../kernel/graph/graph.ts';
import type { OpenCase } from './open-case.ts';

/** What one route makes of a quality. */
export interface RouteQuality {
  readonly route: string;
  /** In `unit` of the row; NaN where it cannot be worked out, null where the route has no such result. */
  readonly value: number | null;
  readonly quantityId: string;
  /** What somebody set for it, in the same unit. */
  readonly limit: number | null;
}

/** One quality of the product or its loop in every route. */
export interface QualityRow {
  readonly label: string;
  readonly unit: string;
  readonly sense: 'at most' | 'at least' | null;
  readonly routes: readonly RouteQuality[];
}

interface Asked {
  readonly of: (routeId: string) => string;
  readonly sense?: 'at most' | 'at least';
  readonly limitOf?: (routeId: string) => string;
}

/** Every quality that some route has: what the product carries, its brightness, the loop, and what strength asks for. */
export function qualityResults(open: OpenCase): readonly QualityRow[] {
  const asked: readonly Asked[] = [
    ...qualities.map(({ id, sense }): Asked => ({
      of: (route) => qualityIdOf(route, id),
      sense,
      limitOf: (route) => limitIdOf(route, id),
    })),
    { of: dissolvedLoadIdOf },
    { of: loopConcentrationIdOf },
    ...strengthProperties.flatMap(({ id }): Asked[] => [
      { of: (route) => strengthIndexIdOf(route, id) },
      { of: (route) => strengthFactorIdOf(route, id) },
    ]),
    { of: proposedServiceIdOf },
    { of: (route) => `${route}.machine.serviceFactor` },
  ];
  return asked.flatMap((each) => rowOf(open, each));
}

function rowOf({ model, values, content }: OpenCase, { of, sense, limitOf }: Asked): readonly QualityRow[] {
  const present = content.routes.map(({ id }) => of(id)).find((id) => values.has(id));
  if (present === undefined) return [];
  const { declaration, unit } = nodeNamed(model.graph, present);
  const shown = declaration?.shownIn ?? unit.text;
  const scale = shown === '%' ? 100 : 1;
  const read = (id: string | undefined): number | null =>
    id !== undefined && values.has(id) ? values.number(id) * scale : null;
  const routes = content.routes.map(({ id: route }): RouteQuality => ({
    route,
    value: read(of(route)),
    quantityId: of(route),
    limit: read(limitOf?.(route)),
  }));
  return [{ label: declaration?.label ?? present, unit: shown, sense: sense ?? null, routes }];
}
