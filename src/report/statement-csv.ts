import type { Comparison } from '../study/comparison.ts';
import { conditionPhrase } from '../wording/condition-phrase.ts';
import type { Spread } from './spread.ts';
import { byteOrderMark, csvCells } from './csv-cells.ts';

/**
 * The statement as comma-separated values for a spreadsheet: byte-order mark, semicolons where the decimal mark is a comma, and text
 * that a spreadsheet would take for a formula made harmless. Numbers keep all their digits and are left alone. The condition on which it
 * holds, and what to look at, stand under the total in rows of their own, so that no copy goes without them.
 */
export function statementCsv(
  comparison: Comparison,
  spread: Pick<Spread, 'capital' | 'sameProduct' | 'warnings'>,
  locale: string,
): string {
  const { text, number, row } = csvCells(locale);
  const { currency, routes, difference } = comparison;
  const heads = [
    'Account',
    'Label',
    ...routes.flatMap((route) => [`${route.label}, ${currency}/t`, `${route.label}, ${currency}/year`]),
    `Difference, ${currency}/t`,
    `Difference, ${currency}/year`,
  ];
  const rows = difference.accounts.map((account, place) => [
    text(account.id),
    text(account.label),
    ...routes.flatMap((route) => [
      number(route.accounts[place]?.perTonne ?? NaN),
      number(route.accounts[place]?.perYear ?? NaN),
    ]),
    number(account.perTonne),
    number(account.perYear),
  ]);
  const total = [
    text('total'),
    text('Whole cost'),
    ...routes.flatMap((route) => [number(route.totals.costPerTonne), number(route.totals.costPerYear)]),
    number(difference.perTonne),
    number(difference.perYear),
  ];
  const remark = (kind: string, sentence: string): readonly string[] => [
    text(kind),
    text(sentence),
    ...heads.slice(2).map(() => ''),
  ];
  const phrase = conditionPhrase(spread);
  const remarks = [
    ...(phrase === '' ? [] : [remark('condition', `${phrase}.`)]),
    ...spread.warnings.map(({ sentence }) => remark('to look at', sentence)),
  ];
  return `${byteOrderMark}${[heads.map(text), ...rows, total, ...remarks].map(row).join('')}`;
}
