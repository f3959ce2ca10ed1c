import { machineWith } from './machine.ts';
import { stepValue } from './step-value.ts';
import { type Tape, steps } from './tape.ts';

/** Works out every step of a tape, in place: `values` holds inputs and fixed numbers in its first slots. */
export function runTape(tape: Tape, values: Float64Array): void {
  const machine = machineWith(tape);
  const room = machine.rooms.values;
  room.set(values.subarray(0, tape.firstStep));
  machine.run();
  values.set(room.subarray(tape.firstStep, tape.slots), tape.firstStep);
}

/** Works out some steps of a tape, in order and in place. Steps that are many are worked here, since a call takes longer than they do. */
export function runSteps(tape: Tape, values: Float64Array, some: Int32Array): void {
  const { codes, first, second, third, fourth, firstStep } = tape;
  for (let k = 0; k < some.length; k += 1) {
    const step = some[k]!;
    const out = firstStep + step;
    const a = values[first[step]!]!;
    const b = values[second[step]!]!;
    switch (codes[step]) {
      case steps.add:
        values[out] = a + b;
        break;
      case steps.subtract:
        values[out] = a - b;
        break;
      case steps.multiply:
        values[out] = a * b;
        break;
      case steps.divide:
        values[out] = b === 0 ? NaN : a / b;
        break;
      case steps.addThree:
        values[out] = a + b + values[third[step]!]!;
        break;
      case steps.addFour:
        values[out] = a + b + values[third[step]!]! + values[fourth[step]!]!;
        break;
      default:
        values[out] = stepValue(codes[step]!, a, b, values[third[step]!]!, values[fourth[step]!]!);
    }
  }
}
