import type { Material, Route } from '../case/case.ts';
import type { Sheet } from './sheet.ts';

/** What the lines of a route are fed with, in the order of the case. */
export function usedMaterials({ case: { materials } }: Sheet, route: Route): readonly Material[] {
  const used = new Set(route.lines.flatMap((line) => line.recipe.map(({ material }) => material)));
  return materials.filter(({ id }) => used.has(id));
}
