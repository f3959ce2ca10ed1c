import type { TrialSummary } from '../../../../src/index.ts';
import type { ResultFigures } from './result-figures.ts';

/** Share of the trials in which the route compared wins; of a present value, those in which the plan does not end below nothing. */
export function winningChance({ belowNothing }: TrialSummary, { winsBelow }: Pick<ResultFigures, 'winsBelow'>): number {
  return winsBelow ? belowNothing.share : 1 - belowNothing.share;
}
