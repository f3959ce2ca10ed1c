import type { Uncertainty } from '../../case/what-if.ts';
import type { OpenCase } from '../open-case.ts';
import { TrialRun } from './run-trials.ts';
import { type TrialPlan, trialPlan } from './trial-plan.ts';
import { type TrialSummary, trialSummary } from './trial-summary.ts';

/** Runs all trials of a result at once and sums them up. `tell` is told how many are done, block by block. */
export function uncertainty(
  open: OpenCase,
  resultId: string,
  changes: Partial<Uncertainty> = {},
  tell: (done: number) => void = () => undefined,
): TrialSummary {
  const plan: TrialPlan = trialPlan(open, resultId, changes);
  const run = new TrialRun(plan, 0, plan.uncertainty.trials);
  while (!run.isDone) {
    run.step();
    tell(run.done);
  }
  return trialSummary(open, plan, [run.segment]);
}
