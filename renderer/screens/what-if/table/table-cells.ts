import type { WhatIfTable } from '../../../../src/index.ts';
import type { Cells } from '../../waste/cells.ts';

/** The table as cells: figures across on top, down at the left, the highest row first as in the picture. */
export function tableCells(
  table: WhatIfTable,
  names: { readonly across: string; readonly down: string },
  decimals: number,
): Cells {
  const rows = table.down.figures.map((figure, row): Cells[number] => [
    figure,
    ...(table.cells[row] ?? []).map((value) => Number(value.toFixed(decimals))),
  ]);
  return [[`${names.down} \\ ${names.across}`, ...table.across.figures], ...rows.reverse()];
}
