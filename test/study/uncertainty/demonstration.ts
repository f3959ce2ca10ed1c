import demonstration from '../../../examples/demonstration.tonne?raw';
import type { GivenDistribution, Uncertainty } from '../../../src/case/what-if.ts';
import { type OpenCase, openCase } from '../../../src/study/open-case.ts';
import { uncertainty } from '../../../src/study/uncertainty/uncertainty.ts';
import type { TrialSummary } from '../../../src/study/uncertainty/trial-summary.ts';

const opened = openCase(demonstration);
if (!opened.ok) throw new Error('The demonstration case cannot be opened');
export const open: OpenCase = opened.value;

/** Trials of the demonstration case with nothing uncertain but what is given. */
export function trialsOf(
  resultId: string,
  inputs: Readonly<Record<string, GivenDistribution>>,
  more: Partial<Uncertainty> = {},
): TrialSummary {
  return uncertainty(open, resultId, { trials: 20_000, seed: 7, years: 1, correlations: [], inputs, ...more });
}
