/** A workbook as data: what stands in which cell. Whoever writes the file decides nothing. */
export interface WorkbookPlan {
  readonly sheets: readonly SheetPlan[];
}

export interface SheetPlan {
  readonly name: string;
  readonly columns: readonly { readonly width: number }[];
  readonly rows: readonly (readonly Cell[])[];
  /** Rows at the top that stay in view. */
  readonly frozenRows: number;
}

export type Cell =
  | { readonly kind: 'text'; readonly text: string; readonly strong?: boolean }
  | { readonly kind: 'number'; readonly value: number; readonly form: NumberForm; readonly strong?: boolean }
  | { readonly kind: 'empty' };

export type NumberForm = 'money' | 'whole money' | 'quantity';
