import { coneOf } from './cone.ts';
import { type LaneLoop, laneLoops, width } from './lane-loops.ts';
import { type LanePlaces, lanePlaces } from './lane-places.ts';
import { runTape } from './run.ts';
import { type Tape, freshSlots, loopOf } from './tape.ts';

/** How many values of each varied slot are worked in one block. */
export const laneCount = 1024;

/**
 * A plan to work a tape out for many values of a few slots: inputs, or steps whose values are handed over. What those do not reach is
 * reckoned once, at the figures in force.
 */
export interface BlockedPlan {
  readonly tape: Tape;
  /** Steps that the varied slots reach, in order. */
  readonly cone: Int32Array;
  /** Value of every slot at the figures in force; what the cone reads from outside it stands here. */
  readonly base: Float64Array;
  /** Lanes of the varied slots and of the results that vary with them. */
  readonly lanes: ReadonlyMap<number, Float64Array>;
  readonly varied: readonly number[];
  readonly results: readonly number[];
  readonly room: LanePlaces;
}

export function blockedPlan(tape: Tape, varied: readonly number[], results: readonly number[]): BlockedPlan {
  const base = freshSlots(tape);
  runTape(tape, base);
  const cone = coneOf(tape, varied, results);
  const reached = new Set([...cone].map((step) => tape.firstStep + step));
  const varying = results.filter((slot) => reached.has(slot));
  const slots = [...varied, ...varying];
  const all = new Float64Array(slots.length * laneCount);
  const lanes = new Map(slots.map((slot, row) => [slot, all.subarray(row * laneCount, (row + 1) * laneCount)]));
  return { tape, cone, base, lanes, varied, results: varying, room: lanePlaces(tape, cone, varied, varying) };
}

/** The lanes of a varied slot, to be filled before a run, or of a result; values in the unit the graph reckons in. */
export function lanesOf(plan: BlockedPlan, slot: number): Float64Array {
  const lanes = plan.lanes.get(slot);
  if (lanes === undefined) throw new Error('This slot has one value for all lanes');
  return lanes;
}

/** Whether a result varies at all; if not, its one value stands in `plan.base`. */
export function varies(plan: BlockedPlan, slot: number): boolean {
  return plan.lanes.has(slot);
}

/** Works the first `count` lanes out. Each step does the same arithmetic as a single run, in the same order: results agree to the bit. */
export function runBlock(plan: BlockedPlan, count: number = laneCount): void {
  const { room, base } = plan;
  const { lanes } = roomFor(room.size);
  room.singleSlots.forEach((slot, k) => (lanes[room.singles + 2 * k] = base[slot]!));
  for (let from = 0; from < count; from += width) {
    const end = Math.min(count, from + width);
    for (const slot of plan.varied) lanes.set(lanesOf(plan, slot).subarray(from, end), room.places[slot]);
    // Four lanes are worked together; what the last of them hold beyond the end is nobody's.
    runLanes(plan, 4 * Math.ceil((end - from) / 4));
    for (const slot of plan.results) {
      const row = room.places[slot]!;
      lanesOf(plan, slot).set(lanes.subarray(row, row + end - from), from);
    }
  }
}

function runLanes({ tape, cone, room: { places, size } }: BlockedPlan, count: number): void {
  const { codes, first, second, third, fourth, firstStep } = tape;
  const { loops } = roomFor(size);
  for (const step of cone) {
    const code = codes[step]!;
    const [a, b] = [places[first[step]!]!, places[second[step]!]!];
    const [c, d] = [places[third[step]!]!, places[fourth[step]!]!];
    loops[loopOf(code)]!(count, code, places[firstStep + step]!, a, b, c, d);
  }
}

interface LaneRoom {
  readonly lanes: Float64Array;
  readonly loops: readonly LaneLoop[];
}

/** One room for all plans by turns, for the reason told in `rooms.ts`. A plan that needs more gets a larger one. */
let laneRoom = makeRoom(2 ** 18);

function makeRoom(size: number): LaneRoom {
  const lanes = new Float64Array(size);
  return { lanes, loops: laneLoops(lanes) };
}

function roomFor(size: number): LaneRoom {
  if (size > laneRoom.lanes.length) laneRoom = makeRoom(2 * size);
  return laneRoom;
}
