import type { ModelLayout } from '../model/model-layout.ts';

/** The names of the cells that say whether every check is kept, and what they say of the figures as they are written. */
export interface Verdict {
  readonly allName: string;
  readonly wordsName: string;
  readonly toleranceName: string;
  /** How many inputs have another figure than the program wrote. */
  readonly changedName: string;
  readonly isKept: boolean;
  readonly words: string;
}

export const keptWords = 'Every check is kept';
export const brokenWords = 'A check is broken: see the sheet Checks';

export function verdictOf({ moreNames }: ModelLayout, isKept: boolean): Verdict {
  return {
    allName: moreNames.nameFor('check.all'),
    wordsName: moreNames.nameFor('check.words'),
    toleranceName: moreNames.nameFor('check.tolerance'),
    changedName: moreNames.nameFor('inputs.changed'),
    isKept,
    words: isKept ? keptWords : brokenWords,
  };
}
