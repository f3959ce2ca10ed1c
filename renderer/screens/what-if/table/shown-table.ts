import type { WhatIfTable } from '../../../../src/index.ts';
import type { ResultWords } from '../tornado/result-words.ts';

/** Cells in the unit they are shown in. */
export function shownTable(table: WhatIfTable, { scale }: Pick<ResultWords, 'scale'>): WhatIfTable {
  return {
    ...table,
    cells: table.cells.map((row) => row.map((value) => value / scale)),
    points: table.points.map((point) => ({ ...point, value: point.value / scale })),
  };
}
