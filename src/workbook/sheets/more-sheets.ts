import type { Verdict } from '../checks/verdict.ts';
import type { ModelCells } from '../model/model-cells.ts';
import type { SheetPlan } from '../plan.ts';
import type { SheetNames } from '../sheet-names.ts';
import { measuredSheet } from './measured-sheet.ts';

/** A sheet of its own for a part of the program, with what stands on it; null where the case has nothing of it. */
type MoreSheet = (cells: ModelCells, sheetNames: SheetNames, verdict: Verdict) => readonly [SheetPlan, string] | null;

/** Parts of the program that add a sheet when the case has something of theirs. */
const more: readonly MoreSheet[] = [measuredSheet];

export function moreSheets(
  cells: ModelCells,
  sheetNames: SheetNames,
  verdict: Verdict,
): readonly (readonly [SheetPlan, string])[] {
  return more.flatMap((sheet) => {
    const made = sheet(cells, sheetNames, verdict);
    return made === null ? [] : [made];
  });
}
