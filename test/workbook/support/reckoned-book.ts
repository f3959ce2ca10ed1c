import { DetailedCellError, HyperFormula } from 'hyperformula';
import type { Cell, WorkbookPlan } from '../../../src/workbook/plan.ts';

/** A plan worked out by a spreadsheet engine from its inputs and formulas alone. */
export class ReckonedBook {
  readonly #engine: HyperFormula;

  constructor(plan: WorkbookPlan) {
    const sheets = Object.fromEntries(
      plan.sheets.map(({ name, rows }) => [name, rows.map((row) => row.map(contentOf))]),
    );
    const names = plan.names.map(({ name, sheet, row, column }) => ({
      name,
      expression: `='${sheet.replaceAll("'", "''")}'!$${letters(column)}$${row}`,
    }));
    this.#engine = HyperFormula.buildFromSheets(sheets, { licenseKey: 'gpl-v3', smartRounding: false }, names);
  }

  /** A number, words, or the error as a spreadsheet writes it. */
  at(sheet: string, row: number, column: number): number | string | boolean | null {
    const id = this.#engine.getSheetId(sheet);
    if (id === undefined) throw new Error(`No sheet "${sheet}"`);
    const value = this.#engine.getCellValue({ sheet: id, row: row - 1, col: column - 1 });
    return value instanceof DetailedCellError ? value.value : value;
  }

  set(sheet: string, row: number, column: number, value: number | string | null): void {
    const id = this.#engine.getSheetId(sheet);
    if (id === undefined) throw new Error(`No sheet "${sheet}"`);
    this.#engine.setCellContents({ sheet: id, row: row - 1, col: column - 1 }, [[value]]);
  }

  /** The engine keeps much; a test that makes many gives each back. */
  close(): void {
    this.#engine.destroy();
  }
}

function contentOf(cell: Cell): string | number | null {
  switch (cell.kind) {
    case 'empty':
      return null;
    case 'text':
      return `'${cell.text}`;
    case 'number':
      return cell.value;
    case 'entry':
      return typeof cell.value === 'string' ? `'${cell.value}` : cell.value;
    case 'formula':
      return `=${cell.formula}`;
  }
}

function letters(column: number): string {
  const last = (column - 1) % 26;
  const before = (column - 1 - last) / 26;
  return `${before === 0 ? '' : letters(before)}${String.fromCharCode(65 + last)}`;
}
