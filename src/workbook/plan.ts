import type { Bounds } from '../kernel/expression/operation.ts';

/** A workbook as data: what stands in which cell. Whoever writes the file decides nothing. */
export interface WorkbookPlan {
  readonly sheets: readonly SheetPlan[];
  /** Names of single cells, by which formulas of any sheet read them. */
  readonly names: readonly CellName[];
}

export interface CellName extends CellPlace {
  readonly name: string;
}

/** Rows and columns are counted from 1, as spreadsheets do. */
export interface CellPlace {
  readonly sheet: string;
  readonly row: number;
  readonly column: number;
}

export interface SheetPlan {
  readonly name: string;
  readonly columns: readonly { readonly width: number }[];
  readonly rows: readonly (readonly Cell[])[];
  /** Rows at the top and columns at the left that stay in view; the rows are printed on every page. */
  readonly frozenRows: number;
  readonly frozenColumns?: number;
  readonly pictures?: readonly Picture[];
}

/** A picture in the format PNG, `width` by `height` pixels, with its upper left corner in a cell. */
export interface Picture {
  readonly png: Uint8Array;
  readonly width: number;
  readonly height: number;
  readonly row: number;
  readonly column: number;
}

export type Cell =
  | { readonly kind: 'empty' }
  | { readonly kind: 'text'; readonly text: string; readonly look?: Look }
  | { readonly kind: 'number'; readonly value: number; readonly form: NumberForm; readonly look?: Look }
  | FormulaCell
  | EntryCell;

/** A formula without its equals sign, with what the program makes of it: shown by whoever opens the file without reckoning. */
export interface FormulaCell {
  readonly kind: 'formula';
  readonly formula: string;
  readonly result: number | string | CellError;
  readonly form: NumberForm;
  readonly look?: Look;
}

/** A cell for the reader to type in: the only ones that are not locked. */
export interface EntryCell {
  readonly kind: 'entry';
  /** Null where there is no figure yet. */
  readonly value: number | string | null;
  readonly form: NumberForm;
  /** What is accepted, and a sentence for what is not. */
  readonly accepts?: { readonly bounds: Bounds; readonly sentence: string };
}

/** What cannot be worked out stands in a cell as "#N/A", which spoils what is made of it as a failure does in the program. */
export interface CellError {
  readonly error: '#N/A';
}

export type NumberForm = 'money' | 'whole money' | 'quantity' | 'share' | 'whole' | 'as typed';

/**
 * `program`: a result of the program, which no formula follows. `verdict`: a formula in words, red as soon as they hold "broken". `bar`: a
 * row of blocks for a picture of a number. `number head`: the head of a column of numbers, which stand to the right.
 */
export type Look = 'title' | 'head' | 'number head' | 'strong' | 'note' | 'program' | 'verdict' | 'bar' | 'entry';
