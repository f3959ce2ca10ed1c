import { type Tape, steps } from './tape.ts';

/** Steps that depend on any of the given inputs and that the wanted results need, in order. */
export function coneOf(tape: Tape, inputs: readonly number[], results: readonly number[]): Int32Array {
  const reached = new Uint8Array(tape.slots);
  for (const place of inputs) reached[place] = 1;
  const needed = new Uint8Array(tape.slots);
  for (const slot of results) needed[slot] = 1;
  for (let step = 0; step < tape.codes.length; step += 1) {
    if (reads(tape, step).some((slot) => reached[slot] === 1)) reached[tape.firstStep + step] = 1;
  }
  const cone: number[] = [];
  for (let step = tape.codes.length - 1; step >= 0; step -= 1) {
    const slot = tape.firstStep + step;
    if (needed[slot] === 0) continue;
    for (const read of reads(tape, step)) needed[read] = 1;
    if (reached[slot] === 1) cone.push(step);
  }
  return Int32Array.from(cone.reverse());
}

/** Slots a step reads. */
export function reads(tape: Tape, step: number): readonly number[] {
  const first = tape.first[step]!;
  const code = tape.codes[step];
  if (code === steps.within) return [first];
  if (code === steps.whenAbove) return [first, tape.second[step]!, tape.third[step]!, tape.fourth[step]!];
  return [first, tape.second[step]!];
}
