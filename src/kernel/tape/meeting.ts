import { coneOf } from './cone.ts';
import type { Tape } from './tape.ts';

/** Where what two inputs do apart comes together. */
export interface Meeting {
  /** Slots that only the first input reaches and that steps read which both reach; the result too where only the first reaches it. */
  readonly ofFirst: readonly number[];
  readonly ofSecond: readonly number[];
}

const bySecond = 2;
const byBoth = 3;

export function meetingOf(tape: Tape, first: number, second: number, result: number): Meeting {
  const marks = new Uint8Array(tape.slots);
  const mark = (place: number, value: number): void => {
    marks[place]! |= value;
    for (const step of coneOf(tape, [place], [result])) marks[tape.firstStep + step]! |= value;
  };
  mark(first, 1);
  mark(second, bySecond);
  const read = new Set([result]);
  for (let step = 0; step < tape.codes.length; step += 1) {
    if (marks[tape.firstStep + step] !== byBoth) continue;
    for (const reads of [tape.first, tape.second, tape.third, tape.fourth]) read.add(reads[step]!);
  }
  const marked = (value: number): readonly number[] => [...read].filter((slot) => marks[slot] === value);
  return { ofFirst: marked(1), ofSecond: marked(bySecond) };
}
