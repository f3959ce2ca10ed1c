import type { Actual, InputView, ReconciledRow } from '../../../src/index.ts';
import type { Per } from '../../session/waste-place.svelte.ts';
import type { Cells } from '../waste/cells.ts';

/** A row as it is shown: in the unit it was measured in, or else for a tonne or a year, as is asked. */
export interface ShownRow {
  readonly computed: number;
  readonly unit: string;
}

export function shownRow({ computed, unit, yearly, actual }: ReconciledRow, per: Per): ShownRow {
  if (actual !== null) return { computed: actual.computed, unit: actual.symbols };
  return per === 'year' && yearly !== null ? yearly : { computed, unit };
}

/** The blank for a measured figure, as a slot takes it. */
export function measuredView(row: ReconciledRow, { unit }: ShownRow): InputView {
  const { result, label, where, actual } = row;
  return {
    id: `actual.${result}`,
    label,
    where,
    value: actual?.value ?? '',
    unit,
    low: null,
    high: null,
    allowed: {},
    status: 'measured',
    source: actual?.source ?? '',
    note: '',
    touched: actual !== null,
    usual: null,
  };
}

/** What was measured after part of it has changed. A figure comes with a unit where one was typed ("90000 MWh/a"). */
export function actualAfter(
  row: ReconciledRow,
  shown: ShownRow,
  change: { readonly typed?: string; readonly period?: string; readonly source?: string },
): Actual {
  const { actual } = row;
  const [value = '', ...words] = (change.typed ?? actual?.value ?? '').split(' ');
  const typedUnit = change.typed === undefined ? (actual?.unit ?? '') : words.join(' ');
  const period = change.period ?? actual?.period ?? '';
  const source = change.source ?? actual?.source ?? '';
  return {
    result: row.result,
    value,
    unit: typedUnit === '' ? shown.unit : typedUnit,
    ...(period === '' ? {} : { period }),
    ...(source === '' ? {} : { source }),
  };
}

/** The table as cells; gaps in per cent of what was measured. */
export function measuredCells(
  groups: readonly { readonly label: string; readonly rows: readonly ReconciledRow[] }[],
  per: Per,
): Cells {
  return [
    ['', 'What', 'Unit', 'Computed', 'Measured', 'Gap, %', 'Period', 'Source'],
    ...groups.flatMap(({ label, rows }) =>
      rows.map((row) => {
        const { computed, unit } = shownRow(row, per);
        const { actual } = row;
        const measured = actual === null ? NaN : Number(actual.value);
        const gap = actual === null ? NaN : actual.gap * 100;
        return [label, row.label, unit, computed, measured, gap, actual?.period ?? '', actual?.source ?? ''];
      }),
    ),
  ];
}
