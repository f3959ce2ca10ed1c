import { shownSummary } from '../../../renderer/screens/what-if/trials/shown-summary.ts';
import { npvId, openCase, uncertainty, type TrialSummary } from '../../../src/index.ts';
import { planText } from '../outlay/plan-case.ts';
import { demonstration } from '../open-demonstration.ts';

/** Trials of the demonstration, few enough to be quick; those of one result are drawn once for a file of tests. */
export function demonstrationTrials(result = 'difference.total', text: string = demonstration): TrialSummary {
  const opened = openCase(text);
  if (!opened.ok) throw new Error('The case does not open.');
  return uncertainty(opened.value, result, { trials: 2_000 });
}

/** Trials of the present value of the example with a plan, in millions as they are shown. */
export function planTrials(): TrialSummary {
  return shownSummary(demonstrationTrials(npvId, planText), { scale: 1e6 });
}

/** The demonstration as it is where nobody has said what is uncertain. */
export function withoutUncertainty(): string {
  const { uncertainty: _said, ...rest } = JSON.parse(demonstration) as Record<string, unknown>;
  return JSON.stringify(rest);
}
