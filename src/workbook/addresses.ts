import type { CellPlace } from './plan.ts';

const letters = 26;

/** The letters of a column, counted from 1: A to ZZZ. */
export function columnLetters(column: number): string {
  const last = (column - 1) % letters;
  const before = (column - 1 - last) / letters;
  return `${before === 0 ? '' : columnLetters(before)}${String.fromCharCode('A'.charCodeAt(0) + last)}`;
}

export function cellAddress(row: number, column: number): string {
  return `${columnLetters(column)}${String(row)}`;
}

/** A cell as a formula on the sheet `from` names it. */
export function cellReference({ sheet, row, column }: CellPlace, from: string): string {
  return sheet === from ? cellAddress(row, column) : `${sheetReference(sheet)}!${cellAddress(row, column)}`;
}

export function sheetReference(sheet: string): string {
  return `'${sheet.replaceAll("'", "''")}'`;
}
