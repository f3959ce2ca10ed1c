import { inForce } from '../kernel/graph/input-declaration.ts';
import { crossings } from '../kernel/solve/crossings.ts';
import { inputRange } from './input-range.ts';
import type { OpenCase } from './open-case.ts';
import { ResultTape } from './result-tape.ts';

/** Where a result becomes a target as one input moves alone; figures in the input's entry unit. */
export interface BreakEven {
  readonly id: string;
  readonly label: string;
  readonly where: string;
  readonly unit: string;
  readonly figure: number;
  /** The range that was searched. */
  readonly from: number;
  readonly to: number;
  /** All crossings, from low to high; none is said as none. */
  readonly crossings: readonly number[];
  /** Whether the crossing nearest to the figure lies within the usual range; null where there is none or no usual range. */
  readonly usual: boolean | null;
}

/** How far beyond its usual range, in widths of it, an input is searched: far enough to say how far away the answer turns. */
const reach = 1;

/** Break-even of one result by one input; null where the result does not depend on it or there is no figure to start from. */
export function breakEven(
  open: OpenCase,
  resultId: string,
  inputId: string,
  target = 0,
  tape: ResultTape = new ResultTape(open, resultId),
): BreakEven | null {
  const input = open.model.graph.inputs.find((each) => each.id === inputId);
  const range =
    input === undefined ? null : (inputRange(input, 'usual range') ?? inputRange(input, 'share either way', 1));
  if (input === undefined || range === null || !tape.reaches(inputId)) return null;
  const figure = Number(inForce(input));
  const width = Math.max(range.high - range.low, Math.abs(figure));
  const least = Number(input.allowed.least ?? input.allowed.above ?? -Infinity);
  const most = Number(input.allowed.most ?? input.allowed.below ?? Infinity);
  const from = Math.max(least, Math.min(range.low, figure) - reach * width);
  const to = Math.min(most, Math.max(range.high, figure) + reach * width);
  const found = crossings((at) => tape.at(inputId, at) - target, from, to);
  const nearest = [...found].sort((a, b) => Math.abs(a - figure) - Math.abs(b - figure))[0];
  const judged = !range.convention && nearest !== undefined;
  return {
    id: inputId,
    label: input.label,
    where: input.where ?? '',
    unit: input.entryUnit,
    figure,
    from,
    to,
    crossings: found,
    usual: judged ? nearest >= range.low && nearest <= range.high : null,
  };
}
