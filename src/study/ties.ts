import { type BreakEven, breakEven } from './break-even.ts';
import type { OpenCase } from './open-case.ts';
import { ResultTape } from './result-tape.ts';

/** Where a result is nothing as one input moves, for each of the inputs that are named and move it. */
export function ties(open: OpenCase, resultId: string, inputIds: readonly string[]): readonly BreakEven[] {
  const tape = new ResultTape(open, resultId);
  return inputIds.flatMap((id) => breakEven(open, resultId, id, 0, tape) ?? []);
}
