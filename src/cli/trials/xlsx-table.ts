import { columnLetters } from '../../workbook/addresses.ts';
import { cellText } from '../../workbook/cell-text.ts';
import type { TrialTable } from './trial-table.ts';
import { ZipWriter } from './zip-writer.ts';

const head = '<?xml version="1.0" encoding="UTF-8" standalone="yes"?>\n';
const main = 'http://schemas.openxmlformats.org/spreadsheetml/2006/main';
const relations = 'http://schemas.openxmlformats.org/officeDocument/2006/relationships';
const packages = 'http://schemas.openxmlformats.org/package/2006';
const types = 'application/vnd.openxmlformats-officedocument.spreadsheetml';

/** The smallest workbook that holds one sheet of plain numbers (ECMA-376-1:2016, part 1, 12.3 and 18.3). */
const parts: readonly (readonly [string, string])[] = [
  [
    '[Content_Types].xml',
    `<Types xmlns="${packages}/content-types"><Default Extension="rels" ContentType="application/vnd.openxmlformats-package.relationships+xml"/><Override PartName="/xl/workbook.xml" ContentType="${types}.sheet.main+xml"/><Override PartName="/xl/worksheets/sheet1.xml" ContentType="${types}.worksheet+xml"/></Types>`,
  ],
  [
    '_rels/.rels',
    `<Relationships xmlns="${packages}/relationships"><Relationship Id="rId1" Type="${relations}/officeDocument" Target="xl/workbook.xml"/></Relationships>`,
  ],
  [
    'xl/workbook.xml',
    `<workbook xmlns="${main}" xmlns:r="${relations}"><sheets><sheet name="Trials" sheetId="1" r:id="rId1"/></sheets></workbook>`,
  ],
  [
    'xl/_rels/workbook.xml.rels',
    `<Relationships xmlns="${packages}/relationships"><Relationship Id="rId1" Type="${relations}/worksheet" Target="worksheets/sheet1.xml"/></Relationships>`,
  ],
];

/** The table as an .xlsx file, written as it comes: the writer of workbooks would hold all of it in memory. */
export function xlsxTable(): TrialTable {
  const zip = new ZipWriter();
  let row = 1;
  const line = (cells: readonly string[]): string => {
    const written = `<row r="${String(row)}">${cells.join('')}</row>`;
    row += 1;
    return written;
  };
  const at = (column: number): string => `${columnLetters(column + 1)}${String(row)}`;
  return {
    begin: (heads) => {
      const before = parts.flatMap(([name, xml]) => [zip.begin(name), zip.part(head + xml), zip.endEntry()]);
      const begun = zip.begin('xl/worksheets/sheet1.xml');
      const view =
        '<sheetViews><sheetView workbookViewId="0"><pane ySplit="1" topLeftCell="A2" activePane="bottomLeft" state="frozen"/></sheetView></sheetViews>';
      const names = line(
        heads.map(
          (name, column) =>
            `<c r="${at(column)}" t="inlineStr"><is><t xml:space="preserve">${escaped(cellText(name))}</t></is></c>`,
        ),
      );
      const sheet = zip.part(`${head}<worksheet xmlns="${main}">${view}<sheetData>${names}`);
      return Buffer.concat([...before, begun, sheet]);
    },
    // What cannot be worked out leaves its cell empty: no number stands for it.
    rows: (rows) =>
      zip.part(
        rows
          .map((cells) =>
            line(
              cells.map((value, column) =>
                Number.isFinite(value) ? `<c r="${at(column)}"><v>${String(value)}</v></c>` : '',
              ),
            ),
          )
          .join(''),
      ),
    end: () => Buffer.concat([zip.part('</sheetData></worksheet>'), zip.endEntry(), zip.end()]),
  };
}

function escaped(text: string): string {
  return text.replaceAll('&', '&amp;').replaceAll('<', '&lt;').replaceAll('>', '&gt;');
}
