import { nodeNamed } from '../kernel/graph/graph.ts';
import { averagePriceIdOf, boughtTonnageIdOf, marginalPriceIdOf } from '../paper/materials/price-ids.ts';
import type { OpenCase } from './open-case.ts';

/** What a route pays for a material whose price goes by tiers: tonnage in `tonnageUnit`, prices in `priceUnit`. */
export interface TieredPrice {
  readonly route: string;
  readonly routeLabel: string;
  readonly material: string;
  readonly materialLabel: string;
  readonly tonnage: number;
  readonly tonnageUnit: string;
  /** Over all it buys: what the statement counts. */
  readonly average: number;
  /** Of the last tonne: what a lot more or less is worth. */
  readonly marginal: number;
  readonly priceUnit: string;
}

export function tieredPrices({ content, values, model }: OpenCase): readonly TieredPrice[] {
  return content.routes.flatMap((route) =>
    content.materials.flatMap((material): TieredPrice[] => {
      const tonnageId = boughtTonnageIdOf(route.id, material.id);
      if (!values.has(tonnageId)) return [];
      const averageId = averagePriceIdOf(route.id, material.id);
      return [
        {
          route: route.id,
          routeLabel: route.label,
          material: material.id,
          materialLabel: material.label,
          tonnage: values.number(tonnageId),
          tonnageUnit: nodeNamed(model.graph, tonnageId).unit.text,
          average: values.number(averageId),
          marginal: values.number(marginalPriceIdOf(route.id, material.id)),
          priceUnit: nodeNamed(model.graph, averageId).unit.text,
        },
      ];
    }),
  );
}
