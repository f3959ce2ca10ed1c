/** What a step of a tape does. `power` is left only where the exponent is not a small whole number. */
export const steps = {
  add: 0,
  subtract: 1,
  multiply: 2,
  divide: 3,
  power: 4,
  lesser: 5,
  greater: 6,
  whenAbove: 7,
  within: 8,
} as const;
export type StepName = keyof typeof steps;

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
  readonly fixed: Float64Array;
  readonly codes: Uint8Array;
  /** Slots that each step reads: value, or value and limit; `third` and `fourth` are the two results of `whenAbove`. */
  readonly first: Int32Array;
  readonly second: Int32Array;
  readonly third: Int32Array;
  readonly fourth: Int32Array;
  /** Limits of each step, one per kind of bound; only `within` has any that bind. */
  readonly limits: {
    readonly least: Float64Array;
    readonly most: Float64Array;
    readonly above: Float64Array;
    readonly below: Float64Array;
  };
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
