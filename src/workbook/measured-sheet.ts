import type { ReconciledGroup } from '../study/trust/reconcile.ts';
import type { Cell, SheetPlan } from './plan.ts';

const text = (value: string, strong = false): Cell => ({ kind: 'text', text: value, strong });
const quantity = (value: number): Cell =>
  Number.isFinite(value) ? { kind: 'number', value, form: 'quantity' } : { kind: 'empty' };

/** Measured figures beside computed ones, over the time and in the unit in which they were measured. */
export function measuredSheet(groups: readonly ReconciledGroup[]): SheetPlan {
  const heads = ['What', 'Computed', 'Measured', 'Unit', 'Gap, %', 'Period', 'Source'].map((head) => text(head, true));
  const rows = groups.flatMap(({ label, rows: found }) => {
    const measured = found.flatMap((row): readonly (readonly Cell[])[] =>
      row.actual === null
        ? []
        : [
            [
              text(row.label),
              quantity(row.actual.computed),
              quantity(Number(row.actual.value)),
              text(row.actual.symbols),
              quantity(row.actual.gap * 100),
              text(row.actual.period ?? ''),
              text(row.actual.source ?? ''),
            ],
          ],
    );
    return measured.length === 0 ? [] : [[text(label, true)], ...measured];
  });
  return {
    name: 'Measured',
    columns: [{ width: 44 }, { width: 18 }, { width: 18 }, { width: 14 }, { width: 12 }, { width: 24 }, { width: 50 }],
    rows: [
      heads,
      ...rows,
      [text('The gap is computed less measured, over measured. Nothing is fitted to what was measured.')],
    ],
    frozenRows: 1,
  };
}
