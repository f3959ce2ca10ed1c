import { nodeNamed } from '../kernel/graph/graph.ts';
import { boughtTonnageIdOf } from '../paper/materials/price-ids.ts';
import { tieredTonnesIdOf } from '../paper/materials/price-tiers.ts';
import type { OpenCase } from './open-case.ts';
import type { ProcessCaution } from './process-caution.ts';

// A tonnage that ends where the tiers end may exceed them by the last bit of a division.
const dust = 1e-9;

/** Routes that buy more of a material than its price tiers hold: the rest is priced like the last tier. */
export function tierCautions({ content, values, model }: OpenCase): readonly ProcessCaution[] {
  return content.routes.flatMap((route) =>
    content.materials.flatMap((material): ProcessCaution[] => {
      const [about, held] = [boughtTonnageIdOf(route.id, material.id), tieredTonnesIdOf(material.id)];
      if (!values.has(about) || !values.has(held)) return [];
      const [value, most] = [values.number(about), values.number(held)];
      const where = `${route.label}, ${material.label}`;
      const unit = nodeNamed(model.graph, about).unit.text;
      return value > most * (1 + dust) ? [{ kind: 'beyond the tiers', about, where, value, most, unit }] : [];
    }),
  );
}
