/** Where cells stand, in pixels. The last row is drawn on top, so that figures rise upward. */
export interface CellGrid {
  readonly left: number;
  readonly top: number;
  readonly width: number;
  readonly height: number;
  readonly columns: number;
  readonly rows: number;
}

/** Left edge of a column; halves are middles. */
export function columnAt({ left, width, columns }: CellGrid, column: number): number {
  return left + (column * width) / columns;
}

/** Top edge of a row. */
export function rowAt({ top, height, rows }: CellGrid, row: number): number {
  return top + ((rows - 1 - row) * height) / rows;
}

/** Middle of a place counted in columns and rows of the cells' middles, as a contour is. */
export function middleAt(grid: CellGrid, [x, y]: readonly [number, number]): readonly [number, number] {
  return [columnAt(grid, x + 0.5), rowAt(grid, y) + grid.height / grid.rows / 2];
}

/** The cell under a point; null outside. */
export function cellUnder(
  grid: CellGrid,
  x: number,
  y: number,
): { readonly row: number; readonly column: number } | null {
  const column = Math.floor(((x - grid.left) / grid.width) * grid.columns);
  const row = grid.rows - 1 - Math.floor(((y - grid.top) / grid.height) * grid.rows);
  return column < 0 || column >= grid.columns || row < 0 || row >= grid.rows ? null : { row, column };
}
