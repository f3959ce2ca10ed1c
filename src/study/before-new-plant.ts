import { kindOfLines } from '../case/route-kind.ts';
import type { OpenCase } from './open-case.ts';

/**
 * Whether the second of the compared routes takes up recovered paper without anyone having entered people, maintenance or capital for it:
 * then its line is free, and the difference stands before any new plant.
 */
function standsBeforeNewPlant({ content }: OpenCase): boolean {
  const { base, with: other } = content.compare;
  const takesRecovered = (routeId: string): boolean =>
    content.routes.some(({ id, lines }) => id === routeId && kindOfLines(lines, content.materials) === 'recovered');
  const entered = ['capital', 'labour', 'maintenance'].some((what) =>
    Object.hasOwn(content.inputs, `${other}.${what}`),
  );
  return takesRecovered(other) && !takesRecovered(base) && !entered;
}

/** What of the capital the difference of the two statements holds: all, none because it stands in a plan, or none because nobody entered any. */
export type CapitalStand = 'counted' | 'in the plan' | 'before new plant';

export function capitalStand(open: OpenCase): CapitalStand {
  const { investment: plan, compare } = open.content;
  const isPlanned = (route: string): boolean => route === plan?.from || route === plan?.to;
  if (isPlanned(compare.base) || isPlanned(compare.with)) return 'in the plan';
  return standsBeforeNewPlant(open) ? 'before new plant' : 'counted';
}
