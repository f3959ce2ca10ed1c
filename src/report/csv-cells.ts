/** How cells are written for a spreadsheet of a region. */
export interface CsvCells {
  /** Text that a spreadsheet would take for a formula is made harmless. */
  readonly text: (value: string) => string;
  /** All digits, and negative numbers left alone; nothing where there is no number. */
  readonly number: (value: number) => string;
  readonly row: (cells: readonly string[]) => string;
}

/** What a file begins with, so that a spreadsheet reads it as UTF-8. */
export const byteOrderMark = '\uFEFF';

/** Cells of comma-separated values: semicolons between them where the decimal mark of the region is a comma. */
export function csvCells(locale: string): CsvCells {
  const comma = new Intl.NumberFormat(locale).format(1.5).includes(',');
  const separator = comma ? ';' : ',';
  return {
    text: (value) => quoted(/^[=+\-@\t\r]/u.test(value) ? `'${value}` : value, separator),
    number: (value) => (Number.isFinite(value) ? String(value).replace('.', comma ? ',' : '.') : ''),
    row: (cells) => `${cells.join(separator)}\r\n`,
  };
}

function quoted(value: string, separator: string): string {
  return value.includes(separator) || /["\r\n]/u.test(value) ? `"${value.replaceAll('"', '""')}"` : value;
}
