import type { Rooms, Stretch } from './rooms.ts';
import { stepValue } from './step-value.ts';
import { steps } from './tape.ts';

/** Works a stretch of steps, in a loop of its own for each kind that is frequent. To be called once for each set of rooms. */
export function forwardIn(rooms: Rooms): Stretch {
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
      const a = values[first[k]!]!;
      const b = values[second[k]!]!;
      values[out + k] = stepValue(codes[k]!, a, b, values[third[k]!]!, values[fourth[k]!]!);
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
