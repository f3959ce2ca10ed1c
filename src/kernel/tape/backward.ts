import type { Rooms, Stretch } from './rooms.ts';
import { steps } from './tape.ts';

/**
 * Hands slopes back from the steps of a stretch, last to first, to what they were made of. To be called once for each set of rooms. A step
 * that does not move the result hands nothing on: it may stand in a branch that was not taken and hold no number, and nothing times no
 * number is no number.
 */
export function backwardIn(rooms: Rooms): Stretch {
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

  /** Half of all steps are products, so that it pays to turn the loop half as often. */
  function multiply(from: number, end: number, out: number): void {
    let k = end - 1;
    for (; k > from; k -= 2) {
      multiplyOne(k, slopes[out + k]!);
      multiplyOne(k - 1, slopes[out + k - 1]!);
    }
    if (k === from) multiplyOne(k, slopes[out + k]!);
  }

  function multiplyOne(k: number, slope: number): void {
    if (slope === 0) return;
    const a = first[k]!;
    const b = second[k]!;
    slopes[a]! += slope * values[b]!;
    slopes[b]! += slope * values[a]!;
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
    const one = first[k]!;
    const two = second[k]!;
    const a = values[one]!;
    const b = values[two]!;
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

  return (code, from, end, out) => {
    switch (code) {
      case steps.add:
        add(from, end, out);
        break;
      case steps.subtract:
        subtract(from, end, out);
        break;
      case steps.multiply:
        multiply(from, end, out);
        break;
      case steps.divide:
        divide(from, end, out);
        break;
      case steps.addThree:
        addThree(from, end, out);
        break;
      case steps.addFour:
        addFour(from, end, out);
        break;
      case steps.within:
        within(from, end, out);
        break;
      default:
        others(from, end, out);
    }
  };
}
