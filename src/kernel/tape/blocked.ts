import { coneOf, reads } from './cone.ts';
import { chosen, kept, quotient, realPower } from './run-step.ts';
import { runTape } from './run.ts';
import { type Tape, freshSlots, steps } from './tape.ts';

/** How many values of each varied input are worked at once. Enough to make a step cheap, few enough to stay in a core's cache. */
export const laneCount = 1024;

/**
 * A plan to work a tape out for many values of a few inputs. What those inputs do not reach is reckoned once, at the figures in force. Rows
 * of lanes are used again as soon as nothing needs them.
 */
export interface BlockedPlan {
  readonly tape: Tape;
  /** Steps that the varied inputs reach, in order. */
  readonly cone: Int32Array;
  /** Value of every slot at the figures in force; what the cone reads from outside it stands here. */
  readonly base: Float64Array;
  /** Row of lanes of each slot in the arena; -1 for a slot that has one value for all lanes. */
  readonly rows: Int32Array;
  readonly arena: Float64Array;
  readonly inputs: readonly number[];
  readonly results: readonly number[];
}

export function blockedPlan(tape: Tape, inputs: readonly number[], results: readonly number[]): BlockedPlan {
  const base = freshSlots(tape);
  runTape(tape, base);
  const cone = coneOf(tape, inputs, results);
  const { rows, count } = rowsFor(tape, cone, inputs, results);
  return { tape, cone, base, rows, arena: new Float64Array(count * laneCount), inputs, results };
}

/** Gives every slot of the cone a row, and a row back when its last reader is done. Results and varied inputs keep theirs. */
function rowsFor(
  tape: Tape,
  cone: Int32Array,
  inputs: readonly number[],
  results: readonly number[],
): { rows: Int32Array; count: number } {
  const lastRead = new Map<number, number>();
  cone.forEach((step, k) => {
    for (const slot of reads(tape, step)) lastRead.set(slot, k);
  });
  const kept = new Set([...inputs, ...results]);
  const rows = new Int32Array(tape.slots).fill(-1);
  const free: number[] = [];
  let count = 0;
  const take = (): number => free.pop() ?? count++;
  for (const place of inputs) rows[place] = take();
  cone.forEach((step, k) => {
    const slot = tape.firstStep + step;
    // The result takes its row before operands give theirs back: a step never writes over what it reads.
    rows[slot] = take();
    for (const read of new Set(reads(tape, step))) {
      if (rows[read]! >= 0 && lastRead.get(read) === k && !kept.has(read)) free.push(rows[read]!);
    }
  });
  return { rows, count };
}

/** The lanes of a varied input, to be filled before a run; values in the unit the graph reckons in. */
export function lanesOf(plan: BlockedPlan, slot: number): Float64Array {
  const row = plan.rows[slot]!;
  if (row < 0) throw new Error('This slot has one value for all lanes');
  return plan.arena.subarray(row * laneCount, (row + 1) * laneCount);
}

/** Whether a result varies at all with the varied inputs; if not, its one value stands in `plan.base`. */
export function varies(plan: BlockedPlan, slot: number): boolean {
  return plan.rows[slot]! >= 0;
}

/** Works the first `count` lanes out. Each step does the same arithmetic as a single run, in the same order: results agree to the bit. */
export function runBlock(plan: BlockedPlan, count: number = laneCount): void {
  for (const step of plan.cone) runLanes(plan, step, count);
}

function runLanes(plan: BlockedPlan, step: number, count: number): void {
  const { tape, rows, arena, base } = plan;
  const out = rows[tape.firstStep + step]! * laneCount;
  const first = tape.first[step]!;
  const second = tape.second[step]!;
  const a = rows[first]! * laneCount;
  const b = rows[second]! * laneCount;
  const code = tape.codes[step]!;
  if (code <= steps.divide) {
    if (a >= 0 && b >= 0) bothVary(arena, code, out, a, b, count);
    else if (a >= 0) leftVaries(arena, code, out, a, base[second]!, count);
    else rightVaries(arena, code, out, base[first]!, b, count);
    return;
  }
  const at = (slot: number, lane: number): number =>
    rows[slot]! < 0 ? base[slot]! : arena[rows[slot]! * laneCount + lane]!;
  for (let lane = 0; lane < count; lane += 1) arena[out + lane] = rareStep(tape, step, (slot) => at(slot, lane));
}

function bothVary(arena: Float64Array, code: number, out: number, a: number, b: number, count: number): void {
  if (code === steps.add) for (let k = 0; k < count; k += 1) arena[out + k] = arena[a + k]! + arena[b + k]!;
  else if (code === steps.subtract) for (let k = 0; k < count; k += 1) arena[out + k] = arena[a + k]! - arena[b + k]!;
  else if (code === steps.multiply) for (let k = 0; k < count; k += 1) arena[out + k] = arena[a + k]! * arena[b + k]!;
  else for (let k = 0; k < count; k += 1) arena[out + k] = quotient(arena[a + k]!, arena[b + k]!);
}

function leftVaries(arena: Float64Array, code: number, out: number, a: number, right: number, count: number): void {
  if (code === steps.add) for (let k = 0; k < count; k += 1) arena[out + k] = arena[a + k]! + right;
  else if (code === steps.subtract) for (let k = 0; k < count; k += 1) arena[out + k] = arena[a + k]! - right;
  else if (code === steps.multiply) for (let k = 0; k < count; k += 1) arena[out + k] = arena[a + k]! * right;
  else for (let k = 0; k < count; k += 1) arena[out + k] = quotient(arena[a + k]!, right);
}

function rightVaries(arena: Float64Array, code: number, out: number, left: number, b: number, count: number): void {
  if (code === steps.add) for (let k = 0; k < count; k += 1) arena[out + k] = left + arena[b + k]!;
  else if (code === steps.subtract) for (let k = 0; k < count; k += 1) arena[out + k] = left - arena[b + k]!;
  else if (code === steps.multiply) for (let k = 0; k < count; k += 1) arena[out + k] = left * arena[b + k]!;
  else for (let k = 0; k < count; k += 1) arena[out + k] = quotient(left, arena[b + k]!);
}

/** Steps that are few: powers, choices and limits. */
function rareStep(
  { codes, first, second, third, fourth, limits }: Tape,
  step: number,
  at: (slot: number) => number,
): number {
  const a = at(first[step]!);
  switch (codes[step]) {
    case steps.power:
      return realPower(a, at(second[step]!));
    case steps.lesser:
      return Math.min(a, at(second[step]!));
    case steps.greater:
      return Math.max(a, at(second[step]!));
    case steps.whenAbove:
      return chosen(a, at(second[step]!), at(third[step]!), at(fourth[step]!));
    default:
      return kept(a, limits.least[step]!, limits.most[step]!, limits.above[step]!, limits.below[step]!);
  }
}
