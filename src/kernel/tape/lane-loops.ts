import { stepValue } from './step-value.ts';

/** How many lanes go through all steps before the next ones do: few enough that their rows stay in a core's cache. A power of two. */
export const width = 256;

/**
 * Works one step for the first `count` lanes. A place that a whole number of rows comes before is the start of a row of lanes; at an odd
 * place stands one number for all lanes. `out` is a row.
 */
export type LaneLoop = (count: number, code: number, out: number, a: number, b: number, c: number, d: number) => void;

/** All bits for a row, whose lanes differ; none for one number. A row's start has no bits in common with a lane, so that "or" adds them. */
function moving(place: number): number {
  return (place & 1) - 1;
}

/** The loops over lanes, by number of the loop (`loopOf`). To be called once for each room; see `rooms.ts` for the reason. */
export function laneLoops(room: Float64Array): readonly LaneLoop[] {
  const lanes = room;

  const add: LaneLoop = (count, _, out, a, b) => {
    const [inA, inB] = [moving(a), moving(b)];
    for (let k = 0; k < count; k += 4) {
      lanes[out | k] = lanes[a | (k & inA)]! + lanes[b | (k & inB)]!;
      lanes[out | (k + 1)] = lanes[a | ((k + 1) & inA)]! + lanes[b | ((k + 1) & inB)]!;
      lanes[out | (k + 2)] = lanes[a | ((k + 2) & inA)]! + lanes[b | ((k + 2) & inB)]!;
      lanes[out | (k + 3)] = lanes[a | ((k + 3) & inA)]! + lanes[b | ((k + 3) & inB)]!;
    }
  };

  const subtract: LaneLoop = (count, _, out, a, b) => {
    const [inA, inB] = [moving(a), moving(b)];
    for (let k = 0; k < count; k += 4) {
      lanes[out | k] = lanes[a | (k & inA)]! - lanes[b | (k & inB)]!;
      lanes[out | (k + 1)] = lanes[a | ((k + 1) & inA)]! - lanes[b | ((k + 1) & inB)]!;
      lanes[out | (k + 2)] = lanes[a | ((k + 2) & inA)]! - lanes[b | ((k + 2) & inB)]!;
      lanes[out | (k + 3)] = lanes[a | ((k + 3) & inA)]! - lanes[b | ((k + 3) & inB)]!;
    }
  };

  const multiply: LaneLoop = (count, _, out, a, b) => {
    const [inA, inB] = [moving(a), moving(b)];
    for (let k = 0; k < count; k += 4) {
      lanes[out | k] = lanes[a | (k & inA)]! * lanes[b | (k & inB)]!;
      lanes[out | (k + 1)] = lanes[a | ((k + 1) & inA)]! * lanes[b | ((k + 1) & inB)]!;
      lanes[out | (k + 2)] = lanes[a | ((k + 2) & inA)]! * lanes[b | ((k + 2) & inB)]!;
      lanes[out | (k + 3)] = lanes[a | ((k + 3) & inA)]! * lanes[b | ((k + 3) & inB)]!;
    }
  };

  const divide: LaneLoop = (count, _, out, a, b) => {
    const [inA, inB] = [moving(a), moving(b)];
    for (let k = 0; k < count; k += 1) {
      const divisor = lanes[b | (k & inB)]!;
      lanes[out | k] = divisor === 0 ? NaN : lanes[a | (k & inA)]! / divisor;
    }
  };

  const addThree: LaneLoop = (count, _, out, a, b, c) => {
    const [inA, inB, inC] = [moving(a), moving(b), moving(c)];
    for (let k = 0; k < count; k += 1) {
      lanes[out | k] = lanes[a | (k & inA)]! + lanes[b | (k & inB)]! + lanes[c | (k & inC)]!;
    }
  };

  const addFour: LaneLoop = (count, _, out, a, b, c, d) => {
    const [inA, inB, inC, inD] = [moving(a), moving(b), moving(c), moving(d)];
    for (let k = 0; k < count; k += 1) {
      lanes[out | k] = lanes[a | (k & inA)]! + lanes[b | (k & inB)]! + lanes[c | (k & inC)]! + lanes[d | (k & inD)]!;
    }
  };

  const within: LaneLoop = (count, _, out, a, least, most) => {
    const [inA, inLeast, inMost] = [moving(a), moving(least), moving(most)];
    for (let k = 0; k < count; k += 1) {
      const value = lanes[a | (k & inA)]!;
      lanes[out | k] = value >= lanes[least | (k & inLeast)]! && value <= lanes[most | (k & inMost)]! ? value : NaN;
    }
  };

  const others: LaneLoop = (count, code, out, a, b, c, d) => {
    const [inA, inB, inC, inD] = [moving(a), moving(b), moving(c), moving(d)];
    for (let k = 0; k < count; k += 1) {
      const [first, second] = [lanes[a | (k & inA)]!, lanes[b | (k & inB)]!];
      lanes[out | k] = stepValue(code, first, second, lanes[c | (k & inC)]!, lanes[d | (k & inD)]!);
    }
  };

  return [add, subtract, multiply, divide, addThree, addFour, within, others];
}
