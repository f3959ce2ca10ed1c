/** A table as cells: figures stay plain numbers, so that a spreadsheet can reckon with them. */
export type Cells = readonly (readonly (string | number)[])[];

/** Tabs between cells and lines between rows. Figures carry the person's decimal mark, which is what their spreadsheet reads. */
export function tabText(cells: Cells, decimalMark: string): string {
  return cells.map((row) => row.map((cell) => plain(cell, decimalMark)).join('\t')).join('\n');
}

export function tableHtml(cells: Cells, decimalMark: string): string {
  const [head = [], ...rows] = cells;
  const line = (row: Cells[number], tag: 'td' | 'th'): string =>
    `<tr>${row.map((cell) => `<${tag}>${escaped(plain(cell, decimalMark))}</${tag}>`).join('')}</tr>`;
  return `<table>${line(head, 'th')}${rows.map((row) => line(row, 'td')).join('')}</table>`;
}

// A cell that begins like a formula would be run by the spreadsheet: an apostrophe before it keeps it a word.
function plain(cell: string | number, decimalMark: string): string {
  if (typeof cell === 'number') return Number.isNaN(cell) ? '' : String(cell).replace('.', decimalMark);
  const oneLine = cell.replaceAll(/[\t\r\n]+/gu, ' ');
  return /^[=+\-@]/u.test(oneLine) ? `'${oneLine}` : oneLine;
}

function escaped(text: string): string {
  return text.replaceAll('&', '&amp;').replaceAll('<', '&lt;').replaceAll('>', '&gt;').replaceAll('"', '&quot;');
}
