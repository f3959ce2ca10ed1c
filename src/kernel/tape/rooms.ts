/**
 * Rooms that tapes are worked in by turns. An engine of JavaScript looks at every turn of a loop which array it reads and how long that is,
 * unless it can see that there is only ever this one: arrays that are made once, held by `const` in a function that is called once, are
 * worked twice as fast as those that are handed over. Whoever uses rooms puts in what it needs and takes out what it wants at once.
 */
export interface Rooms {
  /** How many slots have room. */
  readonly size: number;
  readonly values: Float64Array;
  readonly slopes: Float64Array;
  readonly codes: Uint8Array;
  readonly first: Int32Array;
  readonly second: Int32Array;
  readonly third: Int32Array;
  readonly fourth: Int32Array;
  readonly ends: Int32Array;
}

export function makeRooms(size: number): Rooms {
  return {
    size,
    values: new Float64Array(size),
    slopes: new Float64Array(size),
    codes: new Uint8Array(size),
    first: new Int32Array(size),
    second: new Int32Array(size),
    third: new Int32Array(size),
    fourth: new Int32Array(size),
    ends: new Int32Array(size),
  };
}

/** Works a stretch of steps of one code or, of those that are few, of several: from step `from` up to but not `end`; slot `out` holds the first step of the tape. */
export type Stretch = (code: number, from: number, end: number, out: number) => void;
