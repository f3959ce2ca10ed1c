import type { Rooms, Stretch } from './rooms.ts';
import { steps } from './tape.ts';

/**
 * The loops that hand slopes back from the steps of a stretch, last to first, to what they were made of; by number of the loop (`loopOf`),
 * to be called once for each set of rooms. A step that does not move the result hands nothing on: it may stand in a branch that was not
 * taken and hold no number, and nothing times no number is no number.
 */
export function backwardLoops(rooms: Rooms): readonly Stretch[] {
  const { values, slopes, codes, first, second, third, fourth } = rooms;

  function add(from: number, end: number, out: number): void {
    for (let k = end - 1; k >= from; k -= 1) {
      const slope = slopes[out + k]!;
      slopes[first[k]!]! += slope;
      slopes[second[k]!]! += slope;
    }
  }

  function subtract(from: number, end: number, out: number): void {
    for (let k = end - 1; k >= from; k -= 1) {
      const slope = slopes[out + k]!;
      slopes[first[k]!]! += slope;
      slopes[second[k]!]! -= slope;
    }
  }

  function multiply(from: number, end: number, out: number): void {
    for (let k = end - 1; k >= from; k -= 1) {
      const slope = slopes[out + k]!;
      if (slope === 0) continue;
      const [a, b] = [first[k]!, second[k]!];
      slopes[a]! += slope * values[b]!;
      slopes[b]! += slope * values[a]!;
    }
  }

  function divide(from: number, end: number, out: number): void {
    for (let k = end - 1; k >= from; k -= 1) {
      if (slopes[out + k] === 0) continue;
      const divisor = second[k]!;
      const slope = slopes[out + k]! / values[divisor]!;
      slopes[first[k]!]! += slope;
      slopes[divisor]! -= slope * values[out + k]!;
    }
  }

  function addThree(from: number, end: number, out: number): void {
    for (let k = end - 1; k >= from; k -= 1) {
      const slope = slopes[out + k]!;
      slopes[first[k]!]! += slope;
      slopes[second[k]!]! += slope;
      slopes[third[k]!]! += slope;
    }
  }

  function addFour(from: number, end: number, out: number): void {
    for (let k = end - 1; k >= from; k -= 1) {
      const slope = slopes[out + k]!;
      slopes[first[k]!]! += slope;
      slopes[second[k]!]! += slope;
      slopes[third[k]!]! += slope;
      slopes[fourth[k]!]! += slope;
    }
  }

  function within(from: number, end: number, out: number): void {
    for (let k = end - 1; k >= from; k -= 1) slopes[first[k]!]! += slopes[out + k]!;
  }

  function others(from: number, end: number, out: number): void {
    for (let k = end - 1; k >= from; k -= 1) if (slopes[out + k] !== 0) other(k, slopes[out + k]!);
  }

  function other(k: number, slope: number): void {
    const [one, two] = [first[k]!, second[k]!];
    const [a, b] = [values[one]!, values[two]!];
    switch (codes[k]) {
      case steps.power:
        slopes[one]! += slope * b * Math.pow(a, b - 1);
        if (a > 0) slopes[two]! += slope * Math.log(a) * Math.pow(a, b);
        return;
      case steps.lesser:
        slopes[a <= b ? one : two]! += slope;
        return;
      case steps.greater:
        slopes[a >= b ? one : two]! += slope;
        return;
      default:
        slopes[a > b ? third[k]! : fourth[k]!]! += slope;
    }
  }

  return [add, subtract, multiply, divide, addThree, addFour, within, others];
}
