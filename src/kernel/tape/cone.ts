import type { Tape } from './tape.ts';

/**
 * Steps that depend on any of the varied slots and that the wanted results need, in order. A varied slot is an input, or a step whose value
 * is given: then neither that step is worked nor what only it reads.
 */
export function coneOf(tape: Tape, varied: readonly number[], results: readonly number[]): Int32Array {
  const { first, second, third, fourth, firstStep } = tape;
  const count = tape.codes.length;
  const reached = new Uint8Array(tape.slots);
  for (const slot of varied) reached[slot] = 1;
  const isGiven = reached.slice();
  for (let step = 0; step < count; step += 1) {
    reached[firstStep + step]! |=
      reached[first[step]!]! | reached[second[step]!]! | reached[third[step]!]! | reached[fourth[step]!]!;
  }
  const needed = new Uint8Array(tape.slots);
  for (const slot of results) needed[slot] = 1;
  const cone: number[] = [];
  for (let step = count - 1; step >= 0; step -= 1) {
    const slot = firstStep + step;
    if (needed[slot] === 0 || isGiven[slot] === 1) continue;
    needed[first[step]!] = 1;
    needed[second[step]!] = 1;
    needed[third[step]!] = 1;
    needed[fourth[step]!] = 1;
    if (reached[slot] === 1) cone.push(step);
  }
  return new Int32Array(cone.reverse());
}
