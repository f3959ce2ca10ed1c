import demonstrationText from '../../examples/demonstration.tonne?raw';
import { type OpenCase, type Outcome, openCase } from '../../src/index.ts';

export { demonstrationText };

/** What an outcome holds; a problem is an error of the test. */
export function valueOf<Value>(outcome: Outcome<Value>): Value {
  if (outcome.ok) return outcome.value;
  throw new Error(`Refused: ${JSON.stringify(outcome.problems)}`);
}

/** What is wrong; that nothing is would be an error of the test. */
export function problemsOf(outcome: Outcome<unknown>) {
  if (outcome.ok) throw new Error('Nothing was refused');
  return outcome.problems;
}

/** The demonstration case, worked out. */
export function demonstration(): OpenCase {
  return valueOf(openCase(demonstrationText));
}
