import ExcelJS from 'exceljs';
import type { Cell, NumberForm, SheetPlan, WorkbookPlan } from './plan.ts';

const formats: Readonly<Record<NumberForm, string>> = {
  money: '#,##0.00',
  'whole money': '#,##0',
  quantity: '#,##0.0000',
};

/** As many characters as a cell holds; a spreadsheet calls a file with more damaged (ECMA-376 leaves it open, all programs agree). */
const mostCharacters = 32_767;

/**
 * Writes a plan as the bytes of an xlsx file: the only place that knows the library. It refuses what the library would let through:
 * numbers that are not finite, sheet names that a spreadsheet cuts short or cannot hold, and characters that XML does not allow.
 */
export async function writeXlsx(plan: WorkbookPlan): Promise<Uint8Array> {
  const book = new ExcelJS.Workbook();
  refuseNames(plan.sheets.map((sheet) => sheet.name));
  for (const sheet of plan.sheets) writeSheet(book, sheet);
  return new Uint8Array(await book.xlsx.writeBuffer());
}

/** 1 to 31 characters, none of \ / ? * [ ] :, no apostrophe at an end, each once however it is capitalised. */
function refuseNames(names: readonly string[]): void {
  const met = new Set<string>();
  for (const name of names) {
    const isLegal = name.length >= 1 && name.length <= 31 && !/[\\/?*[\]:]|^'|'$/u.test(name);
    if (!isLegal || met.has(name.toLowerCase())) throw new Error(`Not a sheet name: "${name}"`);
    met.add(name.toLowerCase());
  }
}

function writeSheet(book: ExcelJS.Workbook, plan: SheetPlan): void {
  const frozen = { views: [{ state: 'frozen' as const, ySplit: plan.frozenRows }] };
  const sheet = book.addWorksheet(plan.name, plan.frozenRows > 0 ? frozen : {});
  plan.columns.forEach(({ width }, place) => {
    sheet.getColumn(place + 1).width = width;
  });
  plan.rows.forEach((row, r) => {
    row.forEach((cell, c) => {
      writeCell(sheet.getCell(r + 1, c + 1), cell);
    });
  });
}

function writeCell(target: ExcelJS.Cell, cell: Cell): void {
  if (cell.kind === 'empty') return;
  if (cell.strong === true) target.font = { bold: true };
  if (cell.kind === 'number') {
    if (!Number.isFinite(cell.value)) throw new Error('A number that is not finite cannot stand in a workbook');
    target.value = cell.value;
    target.numFmt = formats[cell.form];
    return;
  }
  target.value = cellText(cell.text);
}

/**
 * A text cell is stored as text, so a leading "=" is shown and never reckoned. Control characters, halves of pairs and non-characters
 * are not XML. "_x0041_" would be read as "A" (ECMA-376, ST_Xstring): its underscore is written in the same way.
 */
function cellText(text: string): string {
  return text
    .slice(0, mostCharacters)
    .replace(/[\u0000-\u0008\u000B\u000C\u000E-\u001F\uFFFE\uFFFF]|\p{Cs}/gu, '\uFFFD')
    .replace(/_(?=x[0-9A-F]{4}_)/giu, '_x005F_');
}
