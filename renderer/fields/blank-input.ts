import type { InputView } from '../../src/index.ts';

/** A figure that can be given and is not there: its id, what it says, and the unit it is written in. */
export interface MissingFigure {
  readonly id: string;
  readonly label: string;
  readonly unit: string;
}

/** A slot for a figure that nobody has given yet: it exists as soon as something is typed. */
export function blankInput(figure: MissingFigure): InputView {
  return {
    ...figure,
    where: '',
    value: '',
    low: null,
    high: null,
    allowed: {},
    status: 'none',
    source: '',
    note: '',
    touched: false,
    usual: null,
  };
}
