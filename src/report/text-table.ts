/** One column of a table in plain text: words to the left, figures to the right. */
export interface Column {
  readonly head: string;
  readonly holds: 'words' | 'figures';
}

/** Rows in aligned columns, two spaces apart; an empty row is a ruled line. */
export function textTable(columns: readonly Column[], rows: readonly (readonly string[])[]): string {
  const widths = columns.map((column, place) =>
    Math.max(column.head.length, ...rows.map((row) => (row[place] ?? '').length)),
  );
  const ruled = widths.map((width) => '\u2500'.repeat(width)).join('  ');
  const written = (cells: readonly string[]): string =>
    columns
      .map(({ holds }, place) => {
        const [cell, width] = [cells[place] ?? '', widths[place] ?? 0];
        return holds === 'words' ? cell.padEnd(width) : cell.padStart(width);
      })
      .join('  ')
      .trimEnd();
  return [
    written(columns.map((column) => column.head)),
    ruled,
    ...rows.map((row) => (row.length === 0 ? ruled : written(row))),
  ].join('\n');
}

/** The usual shape: names in the first column, figures in the others. */
export function figuresTable(heads: readonly string[], rows: readonly (readonly string[])[]): string {
  return textTable(
    heads.map((head, place) => ({ head, holds: place === 0 ? 'words' : 'figures' })),
    rows,
  );
}
