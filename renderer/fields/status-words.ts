import type { InputView } from '../../src/index.ts';

/** How far a figure can be believed, in words. */
export const statusWords: Readonly<Record<InputView['status'], string>> = {
  measured: 'Measured',
  definition: 'By definition',
  read: 'Read in the source',
  derived: 'Worked out from the source',
  memory: 'From memory, not looked up',
  practice: 'Common practice',
  invented: 'Invented for the demonstration',
  none: 'No source given',
};
