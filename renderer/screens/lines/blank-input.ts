import type { InputView } from '../../../src/index.ts';
import type { MissingFigure } from './missing-figures.ts';

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
