import type { RouteHead } from '../../../../src/index.ts';

type Side = 'with' | 'base';

/** Recovered is flecked and virgin plain; of two routes of one kind the one compared is dashed, so that colour is never the only cue. */
export function sidePattern(side: Side, kinds: Readonly<Record<Side, RouteHead['kind']>>): 'fleck' | 'dash' | null {
  if (kinds.with === kinds.base) return side === 'with' ? 'dash' : null;
  return kinds[side] === 'recovered' ? 'fleck' : null;
}
