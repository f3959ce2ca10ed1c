import { restsPhrase } from '../../wording/rests-phrase.ts';
import { inputSource, inputValue } from './input-words.ts';
import { type Markup, element } from './markup.ts';
import { ownSwings } from './own-swings.ts';
import type { PaperFacts } from './paper-facts.ts';
import { ruledTable } from './ruled-table.ts';

const named = 4;

/** The output and the inputs that move the difference most, with their figures and where these come from. */
export function restsTable(facts: PaperFacts, locale: string): Markup {
  const { spread, swings } = facts;
  const ids = [
    spread.product.tonnesInput,
    ...ownSwings(facts)
      .slice(0, named)
      .map(({ id }) => id),
  ];
  const inputs = [...new Set(ids)].flatMap((id) => spread.inputs[id] ?? []);
  const rows = inputs.map((input) => ({
    cells: [
      input.where === '' ? input.label : `${input.label}, ${input.where}`,
      inputValue(input, locale),
      inputSource(input),
    ],
  }));
  const columns = ['Input', 'Value', 'Source'].map((head) => ({ head, holds: 'words' }) as const);
  const phrase = restsPhrase(swings.rests, locale);
  const note = phrase === '' ? '' : `by what they move it: ${phrase}`;
  return element(
    'section',
    {},
    element('h2', {}, element('span', {}, 'What it rests on'), element('small', {}, note)),
    ruledTable(columns, rows, 'Inputs that the answer rests on'),
  );
}
