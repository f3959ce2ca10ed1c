import { width } from './lane-loops.ts';
import type { Tape } from './tape.ts';

/** Where what a plan works with stands in the room of lanes. */
export interface LanePlaces {
  /** Place of each slot that varies, or is read and does not vary; -1 for all others. */
  readonly places: Int32Array;
  /** Slots of the single numbers, in the order they stand in, at every other place from `singles` on. */
  readonly singleSlots: readonly number[];
  readonly singles: number;
  readonly size: number;
}

/**
 * Gives every varied slot and every step of the cone a row of lanes, and the row away again when its last reader is done; results keep theirs. Behind the rows
 * the numbers get places that the cone reads and that do not vary.
 */
export function lanePlaces(
  tape: Tape,
  cone: Int32Array,
  varied: readonly number[],
  results: readonly number[],
): LanePlaces {
  const reads = [tape.first, tape.second, tape.third, tape.fourth];
  const places = new Int32Array(tape.slots).fill(-1);
  const lastReader = new Int32Array(tape.slots);
  for (const step of cone) for (const read of reads) lastReader[read[step]!] = step;
  for (const slot of results) lastReader[slot] = tape.slots;
  const free: number[] = [];
  let rows = 0;
  const takeRow = (slot: number): void => {
    places[slot] = (free.pop() ?? rows++) * width;
  };
  varied.forEach(takeRow);
  for (const step of cone) {
    // The result takes its row before operands give theirs back: a step never writes over what it reads.
    takeRow(tape.firstStep + step);
    for (const read of reads) {
      const slot = read[step]!;
      if (places[slot]! < 0 || lastReader[slot] !== step) continue;
      free.push(places[slot]! / width);
      // What a step reads twice gives its row back once.
      lastReader[slot] = -1;
    }
  }
  const singles = rows * width + 1;
  const singleSlots: number[] = [];
  for (const step of cone) {
    for (const read of reads) {
      if (places[read[step]!]! < 0) places[read[step]!] = singles + 2 * (singleSlots.push(read[step]!) - 1);
    }
  }
  return { places, singleSlots, singles, size: singles + 2 * singleSlots.length };
}
