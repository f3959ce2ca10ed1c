import { freshSlots } from '../../src/kernel/tape/tape.ts';
import type { Side } from '../../src/study/two-way.ts';
import { type BenchCase, placeOf } from './bench-case.ts';
import { cellText } from './cell-text.ts';

/**
 * A flat OpenDocument sheet: the model in column A with a row for each slot; figures of the one side of a table down column B, those of the
 * other along the first row; and between them, if wanted, the table, by the operation that a data table is in this format.
 * Source: OASIS, "Open Document Format for Office Applications (OpenDocument) Version 1.2, Part 2: Recalculated Formula (OpenFormula)
 * Format", 2011, 6.14.8 MULTIPLE.OPERATIONS.
 */
export function officeSheet(bench: BenchCase, down: Side, across: Side, withTable: boolean): string {
  const { tape, result } = bench;
  const [row, column] = [placeOf(tape, down.id), placeOf(tape, across.id)];
  const values = freshSlots(tape);
  const inA = (slot: number): string => `[.A${slot + 1}]`;
  const modelCell = (slot: number): string =>
    slot < tape.firstStep ? numberCell(values[slot]!) : formulaCell(cellText(tape, slot, inA));
  const tableCell = (at: number, place: number): string => {
    const replaced = `${inA(row.place)};[.B${at + 1}];${inA(column.place)};[.${letters(place + 2)}1]`;
    return formulaCell(`MULTIPLE.OPERATIONS(${inA(result.slot)};${replaced})`);
  };
  const tableCells = (at: number): string => {
    if (at === 0)
      return [numberCell(0), ...across.figures.map((figure) => numberCell(figure * column.factor))].join('');
    const figure = down.figures[at - 1];
    if (figure === undefined) return '';
    const cells = withTable ? across.figures.map((_, place) => tableCell(at, place)) : [];
    return [numberCell(figure * row.factor), ...cells].join('');
  };
  const rows = Array.from(
    { length: tape.slots },
    (_, at) => `<table:table-row>${modelCell(at)}${tableCells(at)}</table:table-row>`,
  );
  return documentOf(rows.join('\n'));
}

function numberCell(value: number): string {
  return `<table:table-cell office:value-type="float" office:value="${value}"/>`;
}

function formulaCell(formula: string): string {
  const text = formula.replaceAll('&', '&amp;').replaceAll('<', '&lt;').replaceAll('>', '&gt;');
  return `<table:table-cell table:formula="of:=${text}"/>`;
}

const alphabet = 26;

/** The name of a column, counted from 0: A to ZZ. */
function letters(column: number): string {
  const letter = String.fromCharCode('A'.charCodeAt(0) + (column % alphabet));
  return column < alphabet ? letter : letters(Math.floor(column / alphabet) - 1) + letter;
}

function documentOf(rows: string): string {
  const names = ['office', 'table'].map((name) => `xmlns:${name}="urn:oasis:names:tc:opendocument:xmlns:${name}:1.0"`);
  return `<?xml version="1.0" encoding="UTF-8"?>
<office:document ${names.join(' ')} xmlns:of="urn:oasis:names:tc:opendocument:xmlns:of:1.2" office:version="1.2"
 office:mimetype="application/vnd.oasis.opendocument.spreadsheet">
<office:body><office:spreadsheet><table:table table:name="Model">
${rows}
</table:table></office:spreadsheet></office:body></office:document>
`;
}
