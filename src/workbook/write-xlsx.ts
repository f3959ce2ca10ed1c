import ExcelJS from 'exceljs';
import type { Bounds } from '../kernel/expression/operation.ts';
import { cellAddress, sheetReference } from './addresses.ts';
import { brokenStyle, cellStyle } from './cell-styles.ts';
import { cellText } from './cell-text.ts';
import type { Cell, SheetPlan, WorkbookPlan } from './plan.ts';
import { refuseDamage } from './refusals.ts';

/**
 * Writes a plan as the bytes of an xlsx file: with the writer of trials the only place that knows the library. Every formula carries the
 * program's result, and the file asks to be worked out anew when it is opened. Sheets are locked but for the cells to type in, without a
 * password. A plan that would make a damaged file is refused (thrown): it is a fault of the program.
 */
export async function writeXlsx(plan: WorkbookPlan): Promise<Uint8Array> {
  refuseDamage(plan);
  const book = new ExcelJS.Workbook();
  book.calcProperties.fullCalcOnLoad = true;
  for (const sheet of plan.sheets) await writeSheet(book, sheet);
  for (const { name, sheet, row, column } of plan.names) {
    const [letters = '', digits = ''] = /^([A-Z]+)(\d+)$/u.exec(cellAddress(row, column))?.slice(1) ?? [];
    book.definedNames.add(`${sheetReference(sheet)}!$${letters}$${digits}`, name);
  }
  return new Uint8Array(await book.xlsx.writeBuffer({ zip: { compressionOptions: { level: 3 } } }));
}

async function writeSheet(book: ExcelJS.Workbook, plan: SheetPlan): Promise<void> {
  const sheet = book.addWorksheet(plan.name);
  const [columns, rows] = [Math.max(1, plan.columns.length), Math.max(1, plan.rows.length)];
  if (plan.frozenRows > 0 || plan.frozenColumns !== undefined)
    sheet.views = [{ state: 'frozen', ySplit: plan.frozenRows, xSplit: plan.frozenColumns ?? 0 }];
  sheet.pageSetup = {
    orientation: 'landscape',
    paperSize: 9,
    fitToPage: true,
    fitToWidth: 1,
    fitToHeight: 0,
    printArea: `A1:${cellAddress(rows, columns)}`,
    ...(plan.frozenRows > 0 ? { printTitlesRow: `1:${String(plan.frozenRows)}` } : {}),
  };
  plan.columns.forEach(({ width }, place) => {
    sheet.getColumn(place + 1).width = width;
  });
  plan.rows.forEach((row, r) => {
    row.forEach((cell, c) => {
      if (cell.kind !== 'empty') writeCell(sheet, sheet.getCell(r + 1, c + 1), cell);
    });
  });
  for (const { png, width, height, row, column } of plan.pictures ?? []) {
    const image = book.addImage({ buffer: png.buffer as ExcelJS.Buffer, extension: 'png' });
    sheet.addImage(image, { tl: { col: column - 1, row: row - 1 }, ext: { width, height } });
  }
  await sheet.protect('', { formatColumns: true, formatRows: true, sort: true, autoFilter: true });
}

function writeCell(sheet: ExcelJS.Worksheet, target: ExcelJS.Cell, cell: Exclude<Cell, { kind: 'empty' }>): void {
  target.style = cellStyle(cell, Number(target.col));
  target.value = valueOf(cell);
  if (cell.kind === 'entry' && cell.accepts !== undefined) accept(target, cell.accepts);
  if (cell.kind === 'formula' && cell.look === 'verdict') markBroken(sheet, target.address);
}

function valueOf(cell: Exclude<Cell, { kind: 'empty' }>): ExcelJS.CellValue {
  switch (cell.kind) {
    case 'text':
      return cellText(cell.text);
    case 'number':
      return cell.value;
    case 'entry':
      return typeof cell.value === 'string' ? cellText(cell.value) : cell.value;
    case 'formula':
      return { formula: cell.formula, result: cell.result as ExcelJS.CellFormulaValue['result'] & {} };
  }
}

/** The spreadsheet refuses what is out of the bounds as it is typed; a bound that must not be reached is refused by the formula beside it. */
function accept(
  target: ExcelJS.Cell,
  { bounds, sentence }: { readonly bounds: Bounds; readonly sentence: string },
): void {
  const [low, high] = [bounds.least ?? bounds.above, bounds.most ?? bounds.below].map((digits) =>
    digits === undefined ? undefined : Number(digits),
  );
  const words = {
    allowBlank: true,
    showErrorMessage: true,
    errorTitle: 'Not possible',
    // As many characters as such a sentence may have (ECMA-376-1:2016, part 1, 18.3.1.32, length of "error").
    error: cellText(sentence).slice(0, 225),
  };
  const test = { type: 'decimal' as const, ...words };
  if (low !== undefined && high !== undefined)
    target.dataValidation = { ...test, operator: 'between', formulae: [low, high] };
  else if (low !== undefined) target.dataValidation = { ...test, operator: 'greaterThanOrEqual', formulae: [low] };
  else if (high !== undefined) target.dataValidation = { ...test, operator: 'lessThanOrEqual', formulae: [high] };
}

function markBroken(sheet: ExcelJS.Worksheet, address: string): void {
  const formula = `IF(ISERROR(${address}),TRUE,ISNUMBER(SEARCH("broken",${address})))`;
  sheet.addConditionalFormatting({
    ref: address,
    rules: [{ type: 'expression', priority: 1, formulae: [formula], style: brokenStyle }],
  });
}
