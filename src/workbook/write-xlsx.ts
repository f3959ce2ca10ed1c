import ExcelJS from 'exceljs';
import type { Cell, NumberForm, SheetPlan, WorkbookPlan } from './plan.ts';

const formats: Readonly<Record<NumberForm, string>> = {
  money: '#,##0.00',
  'whole money': '#,##0',
  quantity: '#,##0.0000',
};

/**
 * Writes a plan as the bytes of an xlsx file: the only place that knows the library. It refuses what the library would let through:
 * numbers that are not finite, sheet names that a spreadsheet cuts short or cannot hold, and characters that XML does not allow.
 */
export async function writeXlsx(plan: WorkbookPlan): Promise<Uint8Array> {
  const book = new ExcelJS.Workbook();
  for (const sheet of plan.sheets) writeSheet(book, sheet);
  return new Uint8Array(await book.xlsx.writeBuffer());
}

function writeSheet(book: ExcelJS.Workbook, plan: SheetPlan): void {
  if (plan.name.length > 31 || /[\\/?*[\]:]/u.test(plan.name)) throw new Error(`Not a sheet name: "${plan.name}"`);
  const sheet = book.addWorksheet(plan.name, { views: [{ state: 'frozen', ySplit: plan.frozenRows }] });
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
  // A text cell is stored as text, so a leading "=" is shown and never reckoned. Control characters and non-characters are not XML.
  target.value = cell.text.replace(/[\u0000-\u0008\u000B\u000C\u000E-\u001F\uFFFE\uFFFF]/gu, '\uFFFD');
}
