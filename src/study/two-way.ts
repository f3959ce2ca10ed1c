import { type BlockedPlan, blockedPlan, laneCount, lanesOf, runBlock, varies } from '../kernel/tape/blocked.ts';
import { compileTape } from '../kernel/tape/compile.ts';
import { meetingOf } from '../kernel/tape/meeting.ts';
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

/**
 * A table of a result over two inputs, up to 101 by 101. What only one of them reaches is worked out once for each of its figures; only what
 * both reach is worked out for every cell.
 */
export function twoWay(open: OpenCase, resultId: string, across: Side, down: Side): TwoWay {
  const tape = compileTape(open.model.graph, [resultId]);
  const slot = resultSlot(tape, resultId);
  const meeting = meetingOf(tape, inputPlace(tape, across.id), inputPlace(tape, down.id), slot);
  const columns = sidePlan(tape, across, meeting.ofFirst);
  const rows = sidePlan(tape, down, meeting.ofSecond);
  const plan = blockedPlan(tape, [...meeting.ofFirst, ...meeting.ofSecond], [slot]);
  const width = across.figures.length;
  const count = width * down.figures.length;
  const values = new Float64Array(count).fill(plan.base[slot] ?? NaN);
  const [columnOf, rowOf] = [new Int32Array(count), new Int32Array(count)];
  for (let cell = 0; cell < count; cell += 1) {
    columnOf[cell] = cell % width;
    rowOf[cell] = Math.floor(cell / width);
  }
  for (let start = 0; start < count && varies(plan, slot); start += laneCount) {
    const lanes = Math.min(laneCount, count - start);
    for (const given of meeting.ofFirst) spread(lanesOf(columns, given), columnOf, start, lanesOf(plan, given));
    for (const given of meeting.ofSecond) spread(lanesOf(rows, given), rowOf, start, lanesOf(plan, given));
    runBlock(plan, lanes);
    values.set(lanesOf(plan, slot).subarray(0, lanes), start);
  }
  const cells = down.figures.map((_, row) => across.figures.map((_, column) => values[row * width + column]!));
  return { result: resultId, across, down, cells };
}

/** What one side reaches alone, worked out for each of its figures. */
function sidePlan(tape: Tape, { id, figures }: Side, results: readonly number[]): BlockedPlan {
  const place = inputPlace(tape, id);
  const plan = blockedPlan(tape, [place], results);
  const lanes = lanesOf(plan, place);
  figures.forEach((figure, lane) => (lanes[lane] = figure * tape.inputFactors[place]!));
  runBlock(plan, figures.length);
  return plan;
}

/** Fills lanes with the values of a side: `which` tells for each cell, from `start` on, whose of its figures that is. */
function spread(values: Float64Array, which: Int32Array, start: number, lanes: Float64Array): void {
  const count = Math.min(lanes.length, which.length - start);
  for (let lane = 0; lane < count; lane += 1) lanes[lane] = values[which[start + lane]!]!;
}

/** Evenly spaced figures from one end to the other, both included. */
export function spaced(from: number, to: number, count: number): readonly number[] {
  if (count < 2) return [from];
  return Array.from({ length: count }, (_, k) => (k === count - 1 ? to : from + ((to - from) * k) / (count - 1)));
}
