import type { OpenCase } from '../../study/open-case.ts';
import { type Comparison, compare } from '../../study/comparison.ts';
import { footprint } from '../../study/footprint.ts';
import type { Footprint } from '../../study/footprint-result.ts';
import type { BreakEven } from '../../study/break-even.ts';
import { npvId } from '../../study/investment/npv-id.ts';
import { type PlanResults, planResults } from '../../study/investment/plan-results.ts';
import { type Sensitivity, sensitivity } from '../../study/sensitivity.ts';
import { ties } from '../../study/ties.ts';
import { uncertainty } from '../../study/uncertainty/uncertainty.ts';
import type { TrialSummary } from '../../study/uncertainty/trial-summary.ts';
import { spreadOf } from '../spread-view.ts';
import type { Spread } from '../spread.ts';

/** A present value, what moves it and how it spreads. */
export interface PlanFacts {
  readonly results: PlanResults;
  readonly swings: Sensitivity;
  readonly trials: TrialSummary;
}

/** Everything that papers are made of, worked out once. */
export interface PaperFacts {
  readonly open: OpenCase;
  readonly spread: Spread;
  readonly comparison: Comparison;
  readonly footprint: Footprint;
  readonly swings: Sensitivity;
  /** Where the difference turns, for the inputs that move it most. */
  readonly ties: readonly BreakEven[];
  readonly trials: TrialSummary;
  readonly plan: PlanFacts | null;
}

const tiedInputs = 16;

/** Works out what papers are made of. It draws the trials of the case, which takes a while. `today` is the day ages are told by. */
export function paperFacts(open: OpenCase, today: string): PaperFacts {
  const { totalId } = open.model.difference;
  const swings = sensitivity(open, totalId);
  const results = planResults(open);
  return {
    open,
    spread: spreadOf(open, today),
    comparison: compare(open),
    footprint: footprint(open),
    swings,
    ties: ties(
      open,
      totalId,
      swings.judged.slice(0, tiedInputs).map(({ id }) => id),
    ),
    trials: uncertainty(open, totalId),
    plan: results === null ? null : { results, swings: sensitivity(open, npvId), trials: uncertainty(open, npvId) },
  };
}
