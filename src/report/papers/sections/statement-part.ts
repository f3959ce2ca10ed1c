import { formatNumber } from '../../../wording/number-format.ts';
import type { Amount, SpreadSide } from '../../spread.ts';
import type { Markup } from '../markup.ts';
import type { PaperFacts } from '../paper-facts.ts';
import { part } from '../part.ts';
import { type Row, ruledTable } from '../ruled-table.ts';

/** Both statements face to face, line by line, with what separates them. */
export function statementPart({ spread }: PaperFacts, locale: string): Markup {
  const { base, with: other, groups, difference, currency } = spread;
  const money = (digits: string | undefined, sign = false): string =>
    digits === undefined ? '' : digits === '' ? 'not yet' : formatNumber(digits, { locale, decimals: 2, sign });
  const figures = (left: Amount | undefined, right: Amount | undefined, apart: Amount): readonly string[] => [
    money(left?.shownPerTonne),
    money(right?.shownPerTonne),
    money(apart.shownPerTonne, true),
    money(apart.shownPerYear, true),
  ];
  const rows = groups.flatMap((group): readonly Row[] => [
    { role: 'group', cells: [group.label, ...figures(group.base, group.with, group.difference)] },
    ...group.rows.map((row) => ({
      cells: [nameOf(row.base, row.with), ...figures(row.base?.amount, row.with?.amount, row.difference)],
    })),
  ]);
  const total: Row = { role: 'total', cells: ['Whole cost', ...figures(base.total, other.total, difference)] };
  const heads = [`${currency} a tonne`, base.label, other.label, 'difference', 'million a year'];
  const columns = heads.map((head, place) => ({ head, holds: place === 0 ? 'words' : 'figures' }) as const);
  const note = `prices of ${spread.priceYear}; differences are “${other.label}” less “${base.label}”`;
  return part('Statement', note, ruledTable(columns, [...rows, total], 'Both statements, line by line'));
}

/** Pulp that faces paper is named with both names. */
function nameOf(left: SpreadSide | null, right: SpreadSide | null): string {
  if (left === null || right === null || left.label === right.label) return (left ?? right)?.label ?? '';
  return `${left.label} | ${right.label}`;
}
