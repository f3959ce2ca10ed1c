import type { Case, Line, Material } from '../case/case.ts';
import { materialEntries, templateEntries } from './catalogue.ts';
import { freshId } from '../case/edits/lists.ts';

/** A grade of the program's list as a case buys it: on the basis of its usual price, settled on the dry basis where it is paid wet. */
export function boughtMaterial(id: string): Material | null {
  const entry = materialEntries.get(id);
  if (entry === undefined) return null;
  const settlement = entry.priceBasis === 'as received' ? 'dry basis' : 'as weighed';
  return {
    id,
    label: entry.label,
    like: id,
    origin: entry.origin,
    price: { basis: entry.priceBasis, kind: 'net' },
    settlement,
  };
}

/** The case with a material of the program's list among those it buys. */
export function withMaterial(content: Case, id: string): Case {
  const material = boughtMaterial(id);
  if (material === null || content.materials.some((each) => each.id === id)) return content;
  return { ...content, materials: [...content.materials, material] };
}

/** A line for a material: the train that the program's list usually gives it, preferring trains of the case's own product. */
export function usualLine(content: Case, materialId: string): Line | null {
  const material = content.materials.find((each) => each.id === materialId);
  if (material === undefined) return null;
  const lines = templateEntries.flatMap((template) =>
    template.lines.map((line) => ({ machine: template.machine, line })),
  );
  const fitting = lines.filter(({ line }) => line.material === (material.like ?? materialId));
  const alike = lines.filter(
    ({ line }) => (materialEntries.get(line.material)?.origin === 'virgin') === (material.origin === 'virgin'),
  );
  const own = (each: { readonly machine: string }): boolean => each.machine === content.product.machine;
  const chosen = fitting.find(own) ?? fitting[0] ?? alike.find(own) ?? alike[0];
  return chosen === undefined
    ? null
    : { id: materialId, label: material.label, recipe: [{ material: materialId }], stages: trainOf(chosen.line.train) };
}

/** Stages of a train by the names of the program's list, each with an id of its own. */
export function trainOf(train: readonly string[]): Line['stages'] {
  const ids: string[] = [];
  return train.map((like) => {
    const id = freshId(like.split('/').at(-1)?.replace(/-\d+$/u, '') ?? like, ids);
    ids.push(id);
    return { id, like };
  });
}
