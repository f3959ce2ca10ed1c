import type { WhatIfTable } from '../../../../src/index.ts';
import type { Cells } from '../../waste/cells.ts';
import type { ResultWords } from '../tornado/result-words.ts';

/** The table as cells: figures across on top, down at the left, the highest row first as in the picture; the corner names both and the unit. */
export function tableCells(
  table: WhatIfTable,
  names: { readonly across: string; readonly down: string },
  { unit, decimals }: Pick<ResultWords, 'unit' | 'decimals'>,
): Cells {
  const rows = table.down.figures.map((figure, row): Cells[number] => [
    figure,
    ...(table.cells[row] ?? []).map((value) => Number(value.toFixed(decimals))),
  ]);
  return [[`${names.down} \\ ${names.across}; ${unit}`, ...table.across.figures], ...rows.reverse()];
}
