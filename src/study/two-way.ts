import { blockedPlan, laneCount, lanesOf, runBlock, varies } from '../kernel/tape/blocked.ts';
import { compileTape } from '../kernel/tape/compile.ts';
import { type Tape, inputPlace, resultSlot } from '../kernel/tape/tape.ts';
import type { OpenCase } from './open-case.ts';

/** One side of a table: an input and the figures it takes, in its entry unit. */
export interface Side {
  readonly id: string;
  readonly figures: readonly number[];
}

/** A result over two inputs: `cells[r][c]` is at `down.figures[r]` and `across.figures[c]`. */
export interface TwoWay {
  readonly result: string;
  readonly across: Side;
  readonly down: Side;
  readonly cells: readonly (readonly number[])[];
}

export const mostFigures = 101;

/** A table of a result over two inputs, up to 101 by 101, worked in blocks over what the two inputs reach. */
export function twoWay(open: OpenCase, resultId: string, across: Side, down: Side): TwoWay {
  const tape = compileTape(open.model.graph, [resultId]);
  const slot = resultSlot(tape, resultId);
  const [acrossPlace, downPlace] = [inputPlace(tape, across.id), inputPlace(tape, down.id)];
  const plan = blockedPlan(tape, [acrossPlace, downPlace], [slot]);
  const columns = across.figures.length;
  const count = columns * down.figures.length;
  const values = new Float64Array(count).fill(plan.base[slot] ?? NaN);
  const [acrossValues, downValues] = [reckoned(tape, across), reckoned(tape, down)];
  const [left, right] = [lanesOf(plan, acrossPlace), lanesOf(plan, downPlace)];
  for (let start = 0; start < count && varies(plan, slot); start += laneCount) {
    const lanes = Math.min(laneCount, count - start);
    for (let lane = 0; lane < lanes; lane += 1) {
      left[lane] = acrossValues[(start + lane) % columns]!;
      right[lane] = downValues[Math.floor((start + lane) / columns)]!;
    }
    runBlock(plan, lanes);
    values.set(lanesOf(plan, slot).subarray(0, lanes), start);
  }
  const cells = down.figures.map((_, row) => across.figures.map((_, column) => values[row * columns + column]!));
  return { result: resultId, across, down, cells };
}

/** The figures of a side in the unit the tape reckons in. */
function reckoned(tape: Tape, { id, figures }: Side): Float64Array {
  const factor = tape.inputFactors[inputPlace(tape, id)]!;
  return Float64Array.from(figures, (figure) => figure * factor);
}

/** Evenly spaced figures from one end to the other, both included. */
export function spaced(from: number, to: number, count: number): readonly number[] {
  if (count < 2) return [from];
  return Array.from({ length: count }, (_, k) => (k === count - 1 ? to : from + ((to - from) * k) / (count - 1)));
}
