import type { WhatIfTable } from '../../../../src/index.ts';
import { formatNumber } from '../../../../src/wording/number-format.ts';
import type { ResultWords } from '../tornado/result-words.ts';
import { type CellGrid, cellUnder } from './cell-grid.ts';

/** What the cell under the pointer says: "across 445, down 84: −9.46 €/t; breaks Landfill permit". "" where there is none. */
export function readoutOf(
  table: WhatIfTable,
  grid: CellGrid,
  pointer: { readonly x: number; readonly y: number },
  figures: { readonly across: readonly string[]; readonly down: readonly string[] },
  words: ResultWords,
  locale: string,
): string {
  const cell = cellUnder(grid, pointer.x, pointer.y);
  if (cell === null) return '';
  const value = table.cells[cell.row]?.[cell.column] ?? NaN;
  const broken = (table.broken[cell.row]?.[cell.column] ?? []).map(({ label }) => label);
  const result = Number.isFinite(value)
    ? `${formatNumber(value, { locale, decimals: words.decimals, sign: words.sign })} ${words.unit}`
    : 'cannot be';
  const breaks = broken.length === 0 ? '' : `; breaks ${broken.join(', ')}`;
  return `across ${figures.across[cell.column] ?? ''}, down ${figures.down[cell.row] ?? ''}: ${result}${breaks}`;
}
