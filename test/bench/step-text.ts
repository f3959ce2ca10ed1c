import { type Tape, steps } from '../../src/kernel/tape/tape.ts';

/** Words for what the steps of a tape do, in JavaScript or in the language of a spreadsheet; `of` are the names of what a step reads. */
export type StepWords = Readonly<Record<keyof typeof steps, (of: readonly string[]) => string>>;

const names = Object.keys(steps) as (keyof typeof steps)[];

/** One step in words. `nameOf` names a slot. */
export function stepText(tape: Tape, step: number, words: StepWords, nameOf: (slot: number) => string): string {
  const slots = [tape.first[step]!, tape.second[step]!, tape.third[step]!, tape.fourth[step]!];
  const name = names.find((each) => steps[each] === tape.codes[step]);
  if (name === undefined) throw new Error(`Step ${step} does nothing known`);
  return words[name](slots.map(nameOf));
}

/** The number in a slot of fixed numbers; undefined for all other slots. */
export function fixedIn(tape: Tape, slot: number): number | undefined {
  return slot < tape.firstStep ? tape.fixed[slot - tape.inputIds.length] : undefined;
}
