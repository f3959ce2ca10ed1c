import { type ReconciledGroup, type ReconciledRow, formatNumber, reconcile, unitLabel } from '../index.ts';
import { textTable } from '../report/text-table.ts';
import type { Console } from './console.ts';
import { type SetOptions, openWithSets, wholly } from './open-with-sets.ts';

export interface ReconcileOptions extends SetOptions {
  readonly json?: boolean;
}

/** Prints what was measured beside what is computed, route by route, and how far apart they are. */
export function showReconciliation(console: Console, file: string, options: ReconcileOptions): void {
  const groups = reconcile(wholly(openWithSets(file, options)));
  console.say(options.json === true ? `${JSON.stringify({ groups }, null, 2)}\n` : page(groups, console.locale));
}

function page(groups: readonly ReconciledGroup[], locale: string): string {
  const words = ['', 'unit', 'period', 'source', 'look'];
  const heads = ['', 'unit', 'computed', 'computed for a year', 'measured', 'gap', 'look', 'period', 'source'];
  const rows = groups.flatMap(({ label, rows: found }) => [[label], ...found.map((row) => cells(row, locale))]);
  const table = textTable(
    heads.map((head) => ({ head, holds: words.includes(head) ? 'words' : 'figures' })),
    rows,
  );
  const isMeasured = groups.some(({ rows: found }) => found.some(({ actual }) => actual !== null));
  const closing =
    'The gap is computed less measured, over measured; above 5 % asks for an explanation. Nothing is fitted.';
  return `${table}\n\n${isMeasured ? closing : 'Nothing measured is entered yet.'}\n`;
}

function cells({ label, unit, computed, yearly, actual }: ReconciledRow, locale: string): readonly string[] {
  const number = (value: number): string =>
    Number.isNaN(value) ? 'not yet' : formatNumber(value, { locale, significant: 4 });
  if (actual === null) {
    const year = yearly === null ? '' : `${number(yearly.computed)} ${unitLabel(yearly.unit)}`;
    return [`  ${label}`, unitLabel(unit), number(computed), year];
  }
  const gap = Number.isNaN(actual.gap)
    ? ''
    : `${formatNumber(actual.gap * 100, { locale, decimals: 1, sign: true })} %`;
  return [
    `  ${label}`,
    unitLabel(actual.symbols),
    number(actual.computed),
    '',
    number(Number(actual.value)),
    gap,
    actual.isWide ? 'above 5 %' : '',
    actual.period ?? '',
    actual.source ?? '',
  ];
}
