import type { LotTerms } from './lot-terms.ts';
import { type LotPoint, kindsAt, pointOf } from './slot-figures.ts';
import { isOver, withinTolerance } from './tolerance.ts';

/** States in which a lot is worked out: as it was read, at the ends of what was read, a point worse, and within its tolerance. */
export interface LotState {
  readonly name: 'mean' | 'corner' | 'moister' | 'dirtier' | 'tolerated';
  readonly point: LotPoint;
}

export function lotStates(terms: LotTerms): readonly [LotState, ...LotState[]] {
  const { moisture, unusable, grade, excess } = terms;
  const at = (name: LotState['name'], other: Partial<LotPoint>): LotState => ({ name, point: pointOf(terms, other) });
  return [
    at('mean', {}),
    ...corners(terms).map((other) => at('corner', other)),
    at('moister', { moisture: moisture.mean + 1 }),
    at('dirtier', { kinds: kindsAt(terms, unusable.mean + 1) }),
    ...(grade === null || !isOver(excess) ? [] : [at('tolerated', { kinds: withinTolerance(grade, terms.kinds) })]),
  ];
}

/** Moisture and unusable material at the ends of their intervals, together. */
function corners(terms: LotTerms): readonly Partial<LotPoint>[] {
  const { moisture, unusable } = terms;
  const wet = ends(moisture.low, moisture.high);
  const dirty = ends(unusable.low, unusable.high);
  if (wet.length + dirty.length === 0) return [];
  return (wet.length === 0 ? [moisture.mean] : wet).flatMap((m) =>
    (dirty.length === 0 ? [unusable.mean] : dirty).map((u) => ({ moisture: m, kinds: kindsAt(terms, u) })),
  );
}

function ends(low: number | null, high: number | null): readonly number[] {
  return low === null || high === null ? [] : [low, high];
}
