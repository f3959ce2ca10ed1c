import type { InputView } from '../../spread.ts';
import { inputSource, inputValue } from '../input-words.ts';
import { type Markup, element } from '../markup.ts';
import type { PaperFacts } from '../paper-facts.ts';
import { part } from '../part.ts';
import { ruledTable } from '../ruled-table.ts';

const columns = ['Input', 'Value', 'Source'].map((head) => ({ head, holds: 'words' }) as const);

/** Every input with its figure and where that comes from: those somebody gave first, then the defaults of the program. */
export function assumptionsPart({ spread }: PaperFacts, locale: string): Markup {
  const inputs = Object.values(spread.inputs).filter(({ value }) => value !== '');
  const rows = (all: readonly InputView[]) =>
    all.map((input) => ({
      cells: [
        input.where === '' ? input.label : `${input.label}, ${input.where}`,
        inputValue(input, locale),
        inputSource(input),
      ],
    }));
  return part(
    'Assumptions and their sources',
    'every input of the case',
    ruledTable(columns, rows(inputs.filter(({ touched }) => touched)), 'Figures that somebody gave'),
    element('h2', {}, element('span', {}, 'Defaults of the program')),
    ruledTable(columns, rows(inputs.filter(({ touched }) => !touched)), 'Defaults of the program'),
  );
}
