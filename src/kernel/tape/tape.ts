/**
 * What a step of a tape does. The first seven are many and have loops of their own; the others are few. `power` is
 * left only where the exponent is not a small whole number.
 */
export const steps = {
  add: 0,
  subtract: 1,
  multiply: 2,
  divide: 3,
  addThree: 4,
  addFour: 5,
  within: 6,
  power: 7,
  lesser: 8,
  greater: 9,
  whenAbove: 10,
} as const;
export type StepName = keyof typeof steps;

/** The loop a step is worked in: one for each step of the first seven, the last for all others. */
export const loops = steps.power + 1;
export function loopOf(code: number): number {
  return Math.min(code, steps.power);
}

/**
 * A graph compiled for fast work: flat typed arrays, nothing in them that does not serve the wanted results. Slots hold values: first the
 * inputs, then the fixed numbers, then one for each step, so that step i writes slot `firstStep + i` and reads only slots before it.
 */
export interface Tape {
  readonly inputIds: readonly string[];
  readonly inputPlaces: ReadonlyMap<string, number>;
  /** Turns a figure in the entry unit of an input into the unit the graph reckons in. */
  readonly inputFactors: Float64Array;
  /** Figures in force, in the units the graph reckons in; NaN where there is none. */
  readonly inputValues: Float64Array;
  /** A fixed number stands once for each step that reads it: steps that handed their slopes to one slot would wait for each other. */
  readonly fixed: Float64Array;
  readonly codes: Uint8Array;
  /**
   * Slots that each step reads: value, limit and the two results of `whenAbove`; value, least and most of `within`. A step that reads fewer
   * than four names its first again, so that whoever follows what is read needs no list of how many there are.
   */
  readonly first: Int32Array;
  readonly second: Int32Array;
  readonly third: Int32Array;
  readonly fourth: Int32Array;
  /** Steps stand in stretches worked by one loop; here each ends, told as the number of the step after it. */
  readonly ends: Int32Array;
  readonly firstStep: number;
  readonly slots: number;
  /** Slot of each wanted result. */
  readonly results: ReadonlyMap<string, number>;
}

/** A fresh set of slots with inputs in force and fixed numbers in their places. */
export function freshSlots(tape: Tape): Float64Array {
  const values = new Float64Array(tape.slots);
  values.set(tape.inputValues, 0);
  values.set(tape.fixed, tape.inputIds.length);
  return values;
}

export function resultSlot(tape: Tape, id: string): number {
  const slot = tape.results.get(id);
  if (slot === undefined) throw new Error(`"${id}" is not a result of this tape`);
  return slot;
}

export function inputPlace(tape: Tape, id: string): number {
  const place = tape.inputPlaces.get(id);
  if (place === undefined) throw new Error(`"${id}" is not an input of this tape`);
  return place;
}
