import type { Swing } from '../../../study/sensitivity.ts';
import { formatNumber } from '../../../wording/number-format.ts';
import { unitLabel } from '../../../wording/unit-label.ts';
import { type Markup, element } from '../markup.ts';
import type { PaperFacts } from '../paper-facts.ts';
import { significantText } from '../paper-words.ts';
import { part } from '../part.ts';
import { ruledTable } from '../ruled-table.ts';

const mostRows = 25;

/** What each input does to the difference alone, ranked; those on the plain convention apart. */
export function swingsPart(facts: PaperFacts, locale: string): Markup {
  const { swings, spread } = facts;
  const columns = ['Input', 'figure', 'low to high', 'difference at low', 'at high', 'swing', 'ties at'].map(
    (head, place) => ({ head, holds: place === 0 ? 'words' : 'figures' }) as const,
  );
  const rows = (all: readonly Swing[]) =>
    all.slice(0, mostRows).map((swing) => ({ cells: cellsOf(facts, swing, locale) }));
  const share = formatNumber(swings.share * 100, { locale, significant: 3 });
  const conventional =
    swings.conventional.length === 0
      ? null
      : [
          element(
            'h2',
            {},
            element('span', {}, `Moved by ${share} % either way`),
            element('small', {}, 'a convention: nobody has judged these ranges'),
          ),
          ruledTable(columns, rows(swings.conventional), 'Inputs moved by a convention'),
        ];
  const left = Math.max(swings.judged.length - mostRows, 0) + Math.max(swings.conventional.length - mostRows, 0);
  return part(
    'What each input moves',
    `one at a time, ${spread.currency}/t of difference`,
    ruledTable(columns, rows(swings.judged), 'Inputs over ranges that were judged or have a source'),
    conventional,
    left === 0 ? null : element('p', { class: 'care' }, `${String(left)} inputs that move it less are left out here.`),
  );
}

function cellsOf({ ties }: PaperFacts, swing: Swing, locale: string): readonly string[] {
  const crossings = ties.find(({ id }) => id === swing.id)?.crossings;
  const signed = (value: number): string => formatNumber(value, { locale, decimals: 2, sign: true });
  return [
    `${swing.label}${swing.where === '' ? '' : `, ${swing.where}`}${unitLabel(swing.unit) === '' ? '' : `, ${unitLabel(swing.unit)}`}`,
    significantText(swing.figure, locale),
    `${significantText(swing.low, locale)} to ${significantText(swing.high, locale)}`,
    signed(swing.atLow),
    signed(swing.atHigh),
    formatNumber(swing.swing, { locale, decimals: 2 }),
    crossings === undefined
      ? ''
      : crossings.length === 0
        ? 'none'
        : crossings.map((value) => significantText(value, locale)).join('; '),
  ];
}
