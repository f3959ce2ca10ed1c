import { chosen, kept, quotient, realPower } from './run-step.ts';
import { type Tape, steps } from './tape.ts';

/**
 * Works out every step of a tape, in place: `values` holds inputs and fixed numbers in its first slots. One plain loop; every position it
 * reads was laid out by the compiler, hence the assertions. `only`, if given, lists the steps to do, in order.
 */
export function runTape(tape: Tape, values: Float64Array, only?: Int32Array): void {
  const count = only === undefined ? tape.codes.length : only.length;
  for (let k = 0; k < count; k += 1) {
    const step = only === undefined ? k : only[k]!;
    values[tape.firstStep + step] = stepValue(tape, values, step);
  }
}

function stepValue({ codes, first, second, third, fourth, limits }: Tape, values: Float64Array, step: number): number {
  const a = values[first[step]!]!;
  switch (codes[step]) {
    case steps.add:
      return a + values[second[step]!]!;
    case steps.subtract:
      return a - values[second[step]!]!;
    case steps.multiply:
      return a * values[second[step]!]!;
    case steps.divide:
      return quotient(a, values[second[step]!]!);
    case steps.power:
      return realPower(a, values[second[step]!]!);
    case steps.lesser:
      return Math.min(a, values[second[step]!]!);
    case steps.greater:
      return Math.max(a, values[second[step]!]!);
    case steps.whenAbove:
      return chosen(a, values[second[step]!]!, values[third[step]!]!, values[fourth[step]!]!);
    default:
      return kept(a, limits.least[step]!, limits.most[step]!, limits.above[step]!, limits.below[step]!);
  }
}
