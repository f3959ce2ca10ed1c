import type { WorkbookPlan } from '../../../src/workbook/plan.ts';
import type { ChangedInput } from '../../workbook/support/changed-inputs.ts';

/** The workbook as a person leaves it who types figures over and does not let it be worked out: every result in it is still the old one. */
export function withTyped(plan: WorkbookPlan, changes: readonly ChangedInput[]): WorkbookPlan {
  const typed = new Map(changes.map(({ row, column, figure }) => [`${String(row)} ${String(column)}`, figure]));
  return {
    ...plan,
    sheets: plan.sheets.map((sheet) =>
      sheet.name !== 'Inputs'
        ? sheet
        : {
            ...sheet,
            rows: sheet.rows.map((row, r) =>
              row.map((cell, c) => {
                const figure = typed.get(`${String(r + 1)} ${String(c + 1)}`);
                return cell.kind === 'entry' && figure !== undefined ? { ...cell, value: figure } : cell;
              }),
            ),
          },
    ),
  };
}
