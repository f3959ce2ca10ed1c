import { formatNumber } from '../../wording/number-format.ts';
import { inSentence } from '../../wording/in-sentence.ts';
import { unitLabel } from '../../wording/unit-label.ts';
import { spreadOfTrials } from './board-verdict.ts';
import { type Markup, element } from './markup.ts';
import { ownSwings } from './own-swings.ts';
import type { PaperFacts } from './paper-facts.ts';
import { currencySymbol, significantText } from './paper-words.ts';
import { type Row, ruledTable } from './ruled-table.ts';

const named = 3;

/** What moves the difference most, over ranges that somebody judged or that have a source, and where it turns. */
export function turningTable(facts: PaperFacts, locale: string): Markup {
  const { ties, spread } = facts;
  const rows = ownSwings(facts)
    .slice(0, named)
    .map((swing): Row => {
      const tie = ties.find(({ id }) => id === swing.id);
      const range = `${significantText(swing.low, locale)} to ${significantText(swing.high, locale)}`;
      const crossings = tie?.crossings.map((value) => significantText(value, locale)) ?? [];
      return {
        cells: [
          swing.where === '' ? swing.label : `${swing.where}: ${inSentence(swing.label)}`,
          `${range} ${unitLabel(swing.unit)}`.trimEnd(),
          formatNumber(swing.swing, { locale, significant: 3 }),
          crossings.length === 0 ? 'none' : crossings.join('; '),
        ],
      };
    });
  const columns = ['Input', 'usual range', `swing, ${currencySymbol(spread.currency, locale)}/t`, 'ties at'].map(
    (head, place) => ({ head, holds: place === 0 ? 'words' : 'figures' }) as const,
  );
  return element(
    'div',
    {},
    element('h2', {}, element('span', {}, 'What could turn it')),
    ruledTable(columns, rows, 'Inputs that move the difference most'),
    element(
      'p',
      { class: 'care' },
      `Swing: change of the difference when this input alone runs over its range. ${spreadOfTrials(facts, locale)}`,
    ),
  );
}
