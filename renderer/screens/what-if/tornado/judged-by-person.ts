import type { InputView, Swing } from '../../../../src/index.ts';

/** Whether the range of a swing is one that a person set: it is known, and not the one the program has. */
export function isJudgedByPerson(swing: Swing, method: string, input: InputView | undefined): boolean {
  if (method !== 'usual range' || swing.convention || input === undefined) return false;
  return Number(input.low ?? NaN) !== swing.low || Number(input.high ?? NaN) !== swing.high;
}
