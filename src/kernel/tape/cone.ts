import type { Tape } from './tape.ts';

/** Steps that depend on any of the given inputs and that the wanted results need, in order. */
export function coneOf(tape: Tape, inputs: readonly number[], results: readonly number[]): Int32Array {
  const { first, second, third, fourth, firstStep } = tape;
  const count = tape.codes.length;
  const reached = new Uint8Array(tape.slots);
  for (const place of inputs) reached[place] = 1;
  for (let step = 0; step < count; step += 1) {
    reached[firstStep + step] =
      reached[first[step]!]! | reached[second[step]!]! | reached[third[step]!]! | reached[fourth[step]!]!;
  }
  const needed = new Uint8Array(tape.slots);
  for (const slot of results) needed[slot] = 1;
  const cone: number[] = [];
  for (let step = count - 1; step >= 0; step -= 1) {
    if (needed[firstStep + step] === 0) continue;
    for (const reads of [first, second, third, fourth]) needed[reads[step]!] = 1;
    if (reached[firstStep + step] === 1) cone.push(step);
  }
  return new Int32Array(cone.reverse());
}
