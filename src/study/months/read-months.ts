import { type PricePoint, longestMonth, mostMonths } from '../../case/price-months.ts';

/** How a number in a cell reads: as these digits, in two ways, or not at all. Signs are taken off before. */
export type CellReading =
  { readonly kind: 'number'; readonly digits: string } | { readonly kind: 'either' } | { readonly kind: 'unreadable' };

/** A row that is no month, by its number among all rows that were pasted, from 1. */
export type BadRow = { readonly row: number; readonly given: string } & (
  | { readonly kind: 'cells'; readonly cells: number }
  | { readonly kind: 'no month' | 'month too long' | 'too many' }
  | { readonly kind: 'not a number' | 'two readings'; readonly side: 'pulp' | 'recovered'; readonly cell: string }
);

export interface ReadMonths {
  readonly points: readonly PricePoint[];
  readonly bad: readonly BadRow[];
}

/**
 * Months as they are pasted from a spreadsheet: a row each of month, pulp price and recovered price. Cells are parted by tabs, else by
 * semicolons, else by commas where these are not the decimal mark. Empty rows and one row of headings are passed over.
 */
export function readMonths(text: string, decimalMark: string, read: (cell: string) => CellReading): ReadMonths {
  const rows = text
    .split(/\r\n|\r|\n/u)
    .map((given, place) => ({ row: place + 1, given, cells: cellsOf(given, decimalMark) }))
    .filter(({ cells }) => cells.length > 0);
  const [first] = rows;
  const isHeading = first !== undefined && first.cells.slice(1).every((cell) => !/\d/u.test(cell));
  const found = rows.slice(isHeading && first.cells.length > 1 ? 1 : 0).map((row, place) => monthOf(row, place, read));
  return {
    points: found.flatMap((each) => ('month' in each ? [each] : [])),
    bad: found.flatMap((each) => ('row' in each ? [each] : [])),
  };
}

function cellsOf(row: string, decimalMark: string): readonly string[] {
  const separator = row.includes('\t') ? '\t' : row.includes(';') ? ';' : decimalMark === ',' ? /,\s+/u : ',';
  const cells = row.split(separator).map((cell) =>
    cell
      .trim()
      .replace(/^"(.*)"$/u, '$1')
      .trim(),
  );
  const last = cells.findLastIndex((cell) => cell !== '');
  return cells.slice(0, last + 1);
}

function monthOf(
  { row, given, cells }: { readonly row: number; readonly given: string; readonly cells: readonly string[] },
  place: number,
  read: (cell: string) => CellReading,
): PricePoint | BadRow {
  const bad = { row, given };
  const [month = '', pulpCell = '', recoveredCell = ''] = cells;
  if (cells.length !== 3) return { ...bad, kind: 'cells', cells: cells.length };
  if (month === '') return { ...bad, kind: 'no month' };
  if (month.length > longestMonth) return { ...bad, kind: 'month too long' };
  if (place >= mostMonths) return { ...bad, kind: 'too many' };
  const digits = { pulp: '', recovered: '' };
  for (const [side, cell] of [
    ['pulp', pulpCell],
    ['recovered', recoveredCell],
  ] as const) {
    const minus = /^[-\u2212]\s*/u.exec(cell)?.[0] ?? '';
    const reading = read(cell.slice(minus.length));
    if (reading.kind !== 'number')
      return { ...bad, kind: reading.kind === 'either' ? 'two readings' : 'not a number', side, cell };
    digits[side] = `${minus === '' ? '' : '-'}${reading.digits}`;
  }
  return { month, ...digits };
}
