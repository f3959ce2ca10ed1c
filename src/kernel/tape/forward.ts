import type { Rooms, Stretch } from './rooms.ts';
import { stepValue } from './step-value.ts';

/** The loops that work stretches of steps, by number of the loop (`loopOf`). To be called once for each set of rooms. */
export function forwardLoops(rooms: Rooms): readonly Stretch[] {
  const { values, codes, first, second, third, fourth } = rooms;

  function add(from: number, end: number, out: number): void {
    for (let k = from; k < end; k += 1) values[out + k] = values[first[k]!]! + values[second[k]!]!;
  }

  function subtract(from: number, end: number, out: number): void {
    for (let k = from; k < end; k += 1) values[out + k] = values[first[k]!]! - values[second[k]!]!;
  }

  /** Half of all steps are products, so that it pays to turn the loop half as often. */
  function multiply(from: number, end: number, out: number): void {
    let k = from;
    for (; k + 1 < end; k += 2) {
      values[out + k] = values[first[k]!]! * values[second[k]!]!;
      values[out + k + 1] = values[first[k + 1]!]! * values[second[k + 1]!]!;
    }
    if (k < end) values[out + k] = values[first[k]!]! * values[second[k]!]!;
  }

  function divide(from: number, end: number, out: number): void {
    for (let k = from; k < end; k += 1) {
      const divisor = values[second[k]!]!;
      values[out + k] = divisor === 0 ? NaN : values[first[k]!]! / divisor;
    }
  }

  function addThree(from: number, end: number, out: number): void {
    for (let k = from; k < end; k += 1) {
      values[out + k] = values[first[k]!]! + values[second[k]!]! + values[third[k]!]!;
    }
  }

  function addFour(from: number, end: number, out: number): void {
    for (let k = from; k < end; k += 1) {
      values[out + k] = values[first[k]!]! + values[second[k]!]! + values[third[k]!]! + values[fourth[k]!]!;
    }
  }

  function within(from: number, end: number, out: number): void {
    for (let k = from; k < end; k += 1) {
      const value = values[first[k]!]!;
      values[out + k] = value >= values[second[k]!]! && value <= values[third[k]!]! ? value : NaN;
    }
  }

  function others(from: number, end: number, out: number): void {
    for (let k = from; k < end; k += 1) {
      const [a, b] = [values[first[k]!]!, values[second[k]!]!];
      values[out + k] = stepValue(codes[k]!, a, b, values[third[k]!]!, values[fourth[k]!]!);
    }
  }

  return [add, subtract, multiply, divide, addThree, addFour, within, others];
}
