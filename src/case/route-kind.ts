import type { Case, Line } from './case.ts';

/** The two ways to the same tonne. */
export type RouteKind = 'virgin' | 'recovered';

/** Lines count as recovered as soon as one of them is fed anything but virgin pulp, bought broke included. No lines are virgin. */
export function kindOfLines(lines: readonly Pick<Line, 'recipe'>[], materials: Case['materials']): RouteKind {
  const virgin = new Set(materials.filter(({ origin }) => origin === 'virgin').map(({ id }) => id));
  return lines.every(({ recipe }) => recipe.every(({ material }) => virgin.has(material))) ? 'virgin' : 'recovered';
}
