import { nodeNamed } from '../../kernel/graph/graph.ts';
import { unitLabel } from '../../wording/unit-label.ts';
import { cellAddress } from '../addresses.ts';
import { formula, note, text, told } from '../cells.ts';
import type { Verdict } from '../checks/verdict.ts';
import { firstRow } from '../model/geometry.ts';
import type { ModelCells } from '../model/model-cells.ts';
import { numberForm } from '../number-form.ts';
import type { Cell } from '../plan.ts';
import { linkCell } from './link-cell.ts';

/** Rows that `baseRows` takes up. */
export const baseRowCount = 4;

const saysSo =
  'The figures below were worked out by the program for another base: write the workbook anew from the program.';

/**
 * What every sheet of the program's own results begins with: the result now, which follows the inputs, beside the one that the figures below
 * were worked out for, and a sentence as soon as they part.
 */
export function baseRows(
  cells: ModelCells,
  resultId: string,
  sheet: string,
  { toleranceName }: Verdict,
): readonly (readonly Cell[])[] {
  const { declaration, unit } = nodeNamed(cells.open.model.graph, resultId);
  const value = cells.open.values.number(resultId);
  const form = numberForm(unit, declaration?.shownIn, cells.open.content.currency);
  const [now, then] = [cellAddress(firstRow, 2), cellAddress(firstRow + 1, 2)];
  return [
    [
      text(`${declaration?.label ?? resultId}, now`),
      linkCell(cells, resultId, sheet, 'strong'),
      text(unitLabel(unit.text)),
    ],
    [text('The same, for which the figures below were worked out'), told(value, form), text(unitLabel(unit.text))],
    Number.isFinite(value)
      ? [formula(`IF(ABS(${now}-${then})>${toleranceName}*ABS(${then}),"${saysSo}","")`, '', 'as typed', 'verdict')]
      : [note('')],
    [],
  ];
}
