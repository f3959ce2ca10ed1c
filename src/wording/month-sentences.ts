import { longestMonth, mostMonths } from '../case/price-months.ts';
import type { MonthResults } from '../study/months/month-results.ts';
import type { BadRow } from '../study/months/read-months.ts';

/** Why a pasted row is no month: which row, what stood there, what is wanted. */
export function badRowSentence(bad: BadRow): string {
  const row = `Row ${String(bad.row)} (“${bad.given.trim().replaceAll(/\s+/gu, ' ').slice(0, 60)}”)`;
  switch (bad.kind) {
    case 'cells':
      return `${row} has ${String(bad.cells)} ${bad.cells === 1 ? 'cell' : 'cells'}; wanted are three: month, pulp price, recovered price.`;
    case 'no month':
      return `${row} names no month.`;
    case 'month too long':
      return `${row}: a month has at most ${String(longestMonth)} characters.`;
    case 'too many':
      return `${row} is one too many; there can be ${String(mostMonths)} months.`;
    case 'not a number':
      return `${row}: the ${bad.side === 'pulp' ? 'pulp' : 'recovered'} price “${bad.cell}” is not a number.`;
    case 'two readings':
      return `${row}: the ${bad.side === 'pulp' ? 'pulp' : 'recovered'} price “${bad.cell}” can be read in two ways; write it without marks between thousands.`;
  }
}

/**
 * "Recovered was cheaper in 17 of 24 months; virgin in 7." Names are those of the route compared and of the base; a difference below nothing
 * speaks for the first. Months that cannot be worked out are told apart.
 */
export function monthsSentence(
  { result, months, below, above, even, unknown }: MonthResults,
  { base, other }: { readonly base: string; readonly other: string },
): string {
  const all = `${String(months.length)} ${months.length === 1 ? 'month' : 'months'}`;
  const rest = [
    ...(even > 0 ? [`neither in ${String(even)}`] : []),
    ...(unknown > 0 ? [`${String(unknown)} cannot be worked out`] : []),
  ];
  const first = other.charAt(0).toUpperCase() + other.slice(1);
  const verdict = verdicts.get(result);
  const told =
    verdict === undefined
      ? `The result was above nothing in ${String(above)} of ${all}; below in ${String(below)}`
      : `${first} ${verdict} in ${String(below)} of ${all}; ${base} in ${String(above)}`;
  return `${[told, ...rest].join('; ')}.`;
}

const verdicts: ReadonlyMap<string, string> = new Map([
  ['difference.total', 'was cheaper'],
  ['difference.withoutPolicy', 'was cheaper without policy'],
  ['difference.footprint.total', 'emitted less'],
]);
