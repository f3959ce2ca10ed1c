import { type BreakEven, breakEven } from './break-even.ts';
import type { OpenCase } from './open-case.ts';
import { ResultTape } from './result-tape.ts';
import { sensitivity } from './sensitivity.ts';

/** Where a result is nothing as one input moves, for the inputs with the largest judged swings and others that are named. */
export function ties(
  open: OpenCase,
  resultId: string,
  count: number,
  named: readonly string[] = [],
): readonly BreakEven[] {
  const tape = new ResultTape(open, resultId);
  const largest = sensitivity(open, resultId)
    .judged.slice(0, count)
    .map(({ id }) => id);
  return [...new Set([...named, ...largest])].flatMap((id) => breakEven(open, resultId, id, 0, tape) ?? []);
}
