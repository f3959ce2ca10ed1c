import { type ReconciledGroup, reconcile } from '../../study/trust/reconcile.ts';
import { unitLabel } from '../../wording/unit-label.ts';
import { empty, heads, note, number, strong, text, told } from '../cells.ts';
import type { Verdict } from '../checks/verdict.ts';
import type { ModelCells } from '../model/model-cells.ts';
import type { Cell, SheetPlan } from '../plan.ts';
import type { SheetNames } from '../sheet-names.ts';
import { framed } from './framed.ts';
import { linkCell } from './link-cell.ts';

/** Measured figures beside computed ones, over the time and in the unit in which they were measured; null where nothing was measured. */
export function measuredSheet(
  cells: ModelCells,
  sheetNames: SheetNames,
  verdict: Verdict,
): readonly [SheetPlan, string] | null {
  const groups = reconcile(cells.open).filter(({ rows }) => rows.some(({ actual }) => actual !== null));
  if (groups.length === 0) return null;
  const name = sheetNames.nameFor('Measured');
  const sheet = framed({
    name,
    title: 'Measured beside computed',
    says: 'Computed figures and gaps are results of the program at the moment of writing; only the column "Now" follows the inputs. Nothing is fitted to what was measured.',
    verdict,
    heads: heads('What', 'Now', 'Unit now', 'Computed', 'Measured', 'Unit', 'Gap', 'Period', 'Source'),
    widths: [44, 18, 18, 18, 18, 18, 12, 24, 50],
    rows: [
      ...groups.flatMap((group) => [[strong(group.label)], ...rowsOf(cells, name, group)]),
      [],
      [note('The gap is computed less measured, over measured.')],
    ],
    frozenColumns: 1,
  });
  return [sheet, 'measured figures beside computed ones'];
}

function rowsOf(cells: ModelCells, name: string, { rows }: ReconciledGroup): readonly (readonly Cell[])[] {
  return rows.flatMap(({ label, result, unit, actual }): readonly (readonly Cell[])[] =>
    actual === null
      ? []
      : [
          [
            text(`   ${label}`),
            linkCell(cells, result, name),
            text(unitLabel(unit)),
            told(actual.computed, 'quantity'),
            number(Number(actual.value), 'quantity'),
            text(unitLabel(actual.symbols)),
            Number.isFinite(actual.gap) ? told(actual.gap, 'share') : empty,
            text(actual.period ?? ''),
            text(actual.source ?? ''),
          ],
        ],
  );
}
