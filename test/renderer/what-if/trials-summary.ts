import { openCase, uncertainty, type TrialSummary } from '../../../src/index.ts';
import { demonstration } from '../open-demonstration.ts';

/** Trials of the demonstration, few enough to be quick; those of one result are drawn once for a file of tests. */
export function demonstrationTrials(result = 'difference.total', text: string = demonstration): TrialSummary {
  const opened = openCase(text);
  if (!opened.ok) throw new Error('The case does not open.');
  return uncertainty(opened.value, result, { trials: 2_000 });
}

/** The demonstration as it is where nobody has said what is uncertain. */
export function withoutUncertainty(): string {
  const { uncertainty: _said, ...rest } = JSON.parse(demonstration) as Record<string, unknown>;
  return JSON.stringify(rest);
}
