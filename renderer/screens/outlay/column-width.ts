import { formatNumber } from '../../../src/wording/number-format.ts';
import type { YearRow } from './year-rows.ts';

/** Room for the names of rows, in pixels. */
export const namesWidth = 124;

// A figure of the table, and room beside it; widths of the type they are set in.
const [digitWidth, beside, leastColumn, slotColumn, marginLeft] = [6.9, 7, 30, 54, 16];

/** Width of one year: what is there is shared out, but no figure is cut; then the table is wider than the page and scrolls. */
export function columnWidth(rows: readonly YearRow[], years: number, width: number, hasSlots: boolean): number {
  const longest = Math.max(
    0,
    ...rows.flatMap(({ cells }) => cells.map(({ value }) => formatNumber(value, { locale: 'en', decimals: 1 }).length)),
  );
  const least = Math.max(leastColumn, longest * digitWidth + beside, hasSlots ? slotColumn : 0);
  return Math.max(least, (width - marginLeft - namesWidth) / Math.max(1, years));
}
