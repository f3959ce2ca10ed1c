import type { Tape } from './tape.ts';

const bits = 32;

/**
 * For each input, the steps that depend on it, in order. One pass for all: each slot carries a set of the inputs that reach it, one bit an
 * input, so that this takes no longer than a few single cones.
 */
export function conesOf(tape: Tape): readonly Int32Array[] {
  const { first, second, third, fourth, firstStep } = tape;
  const words = Math.ceil(tape.inputIds.length / bits);
  const reached = new Int32Array(tape.slots * words);
  const cones = tape.inputIds.map((_, place): number[] => {
    reached[place * words + Math.floor(place / bits)] = 1 << (place % bits);
    return [];
  });
  for (let step = 0; step < tape.codes.length; step += 1) {
    const [a, b] = [first[step]! * words, second[step]! * words];
    const [c, d] = [third[step]! * words, fourth[step]! * words];
    for (let word = 0; word < words; word += 1) {
      let set = reached[a + word]! | reached[b + word]! | reached[c + word]! | reached[d + word]!;
      reached[(firstStep + step) * words + word] = set;
      // From the lowest bit to the highest: a set less one differs from the set in its lowest bit and those below.
      for (; set !== 0; set &= set - 1) cones[word * bits + bits - 1 - Math.clz32(set & -set)]!.push(step);
    }
  }
  return cones.map((cone) => new Int32Array(cone));
}
