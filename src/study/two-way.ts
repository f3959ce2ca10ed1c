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
 * A table of a result over two inputs, up to 101 by 101. What only one of them reaches is worked out once for each of its figures; what both
 * reach is worked out for every cell, some whole rows of the table in one block. Throws where both sides are one input.
 */
export function twoWay(open: OpenCase, resultId: string, across: Side, down: Side): TwoWay {
  const tape = compileTape(open.model.graph, [resultId]);
  const slot = resultSlot(tape, resultId);
  const { ofFirst, ofSecond } = meetingOf(tape, inputPlace(tape, across.id), inputPlace(tape, down.id), slot);
  const columns = sidePlan(tape, across, ofFirst);
  const rows = sidePlan(tape, down, ofSecond);
  const plan = blockedPlan(tape, [...ofFirst, ...ofSecond], [slot]);
  const width = across.figures.length;
  if (across.id === down.id || Math.max(width, down.figures.length) > mostFigures)
    throw new Error('A table has two inputs, and at most 101 figures a side');
  const rowsAtOnce = Math.floor(laneCount / width);
  for (const given of ofFirst) repeatRow(lanesOf(columns, given), width, lanesOf(plan, given));
  const cells: number[][] = [];
  while (cells.length < down.figures.length) {
    const count = Math.min(rowsAtOnce, down.figures.length - cells.length);
    for (const given of ofSecond) fillRows(lanesOf(rows, given), cells.length, count, width, lanesOf(plan, given));
    runBlock(plan, count * width);
    const valueAt = varies(plan, slot) ? lanesOf(plan, slot) : new Float64Array(laneCount).fill(plan.base[slot]!);
    for (let row = 0; row < count; row += 1) cells.push([...valueAt.subarray(row * width, (row + 1) * width)]);
  }
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

/** Every row has the same value in the same column. */
function repeatRow(values: Float64Array, width: number, lanes: Float64Array): void {
  for (let lane = 0; lane < lanes.length; lane += 1) lanes[lane] = values[lane % width]!;
}

/** All columns have the same value in the same row. */
function fillRows(values: Float64Array, firstRow: number, count: number, width: number, lanes: Float64Array): void {
  for (let row = 0; row < count; row += 1) lanes.fill(values[firstRow + row]!, row * width, (row + 1) * width);
}

/** Evenly spaced figures from one end to the other, both included. */
export function spaced(from: number, to: number, count: number): readonly number[] {
  if (count < 2) return [from];
  return Array.from({ length: count }, (_, k) => (k === count - 1 ? to : from + ((to - from) * k) / (count - 1)));
}
