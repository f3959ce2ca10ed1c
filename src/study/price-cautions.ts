import type { Origin } from '../case/case.ts';
import { loadPriceIdOf } from '../paper/materials/inbound-freight.ts';
import type { OpenCase } from './open-case.ts';

/** What a buyer would remark on about the price of a material or of its freight. */
export type PriceCaution =
  | {
      readonly kind: 'list price';
      readonly about: string;
      readonly material: string;
      readonly origin: Origin;
    }
  | { readonly kind: 'freight by load'; readonly about: string; readonly material: string; readonly given: string };

export function priceCautions(open: OpenCase): readonly PriceCaution[] {
  return [...listPrices(open), ...freightByLoad(open)];
}

/** Pulp is quoted as list and recovered paper as traded: a list price without a discount flatters whatever it is compared with. */
function listPrices({ content, model }: OpenCase): readonly PriceCaution[] {
  const used = new Set(
    content.routes.flatMap((route) => route.lines.flatMap((line) => line.recipe.map((grade) => grade.material))),
  );
  return content.materials
    .filter(
      (material) =>
        material.price.kind === 'list' &&
        used.has(material.id) &&
        !model.graph.positions.has(`material.${material.id}.discount`),
    )
    .map(({ id, label, origin }) => ({ kind: 'list price', about: `material.${id}.price`, material: label, origin }));
}

/** Freight by the load takes the place of freight by the tonne: a figure that is given for the tonne as well has no part in anything. */
function freightByLoad({ content, values }: OpenCase): readonly PriceCaution[] {
  return content.materials.flatMap(({ id, label }): readonly PriceCaution[] => {
    const about = `material.${id}.freight`;
    const given = content.inputs[about]?.value ?? '0';
    return values.has(loadPriceIdOf(id)) && Number(given) !== 0
      ? [{ kind: 'freight by load', about, material: label, given }]
      : [];
  });
}
