import type { OpenCase } from './open-case.ts';

/**
 * Whether the second of the compared routes takes up recovered paper without anyone having entered people, maintenance or capital for it:
 * then its line is free, and the difference stands before any new plant.
 */
export function standsBeforeNewPlant({ content }: OpenCase): boolean {
  const { base, with: other } = content.compare;
  const origins = new Map(content.materials.map((material) => [material.id, material.origin]));
  const takesRecovered = (routeId: string): boolean =>
    content.routes
      .filter((route) => route.id === routeId)
      .some((route) =>
        route.lines.some((line) => line.recipe.some((grade) => origins.get(grade.material) !== 'virgin')),
      );
  const entered = ['capital', 'labour', 'maintenance'].some((what) =>
    Object.hasOwn(content.inputs, `${other}.${what}`),
  );
  return takesRecovered(other) && !takesRecovered(base) && !entered;
}
