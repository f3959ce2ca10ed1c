import { type CellGrid, columnAt, rowAt } from './cell-grid.ts';

/**
 * One outline for all cells of a kind: neighbours in a row become one box, so that ten thousand cells are drawn with a few paths. The key
 * of a cell is that of its path; cells with the key "" are left out.
 */
export function cellPaths(grid: CellGrid, keyOf: (row: number, column: number) => string): ReadonlyMap<string, string> {
  const paths = new Map<string, string>();
  for (let row = 0; row < grid.rows; row += 1) {
    let from = 0;
    for (let column = 1; column <= grid.columns; column += 1) {
      const key = keyOf(row, from);
      if (column < grid.columns && keyOf(row, column) === key) continue;
      if (key !== '') paths.set(key, (paths.get(key) ?? '') + box(grid, row, from, column));
      from = column;
    }
  }
  return paths;
}

function box(grid: CellGrid, row: number, from: number, to: number): string {
  const [left, right] = [columnAt(grid, from), columnAt(grid, to)];
  const top = rowAt(grid, row);
  return `M${short(left)} ${short(top)}H${short(right)}V${short(top + grid.height / grid.rows)}H${short(left)}Z`;
}

/** A mark in the right top corner of each cell that is asked for. */
export function cornerPath(grid: CellGrid, size: number, isMarked: (row: number, column: number) => boolean): string {
  let path = '';
  for (let row = 0; row < grid.rows; row += 1) {
    for (let column = 0; column < grid.columns; column += 1) {
      if (!isMarked(row, column)) continue;
      const [right, top] = [columnAt(grid, column + 1) - 1, rowAt(grid, row) + 1];
      path += `M${short(right - size)} ${short(top)}h${size}v${size}Z`;
    }
  }
  return path;
}

/** Lines between cells. */
export function seamPath(grid: CellGrid): string {
  const across = Array.from(
    { length: grid.rows - 1 },
    (_, row) => `M${short(grid.left)} ${short(rowAt(grid, row))}h${short(grid.width)}`,
  );
  const down = Array.from(
    { length: grid.columns - 1 },
    (_, column) => `M${short(columnAt(grid, column + 1))} ${short(grid.top)}v${short(grid.height)}`,
  );
  return [...across, ...down].join('');
}

function short(pixels: number): string {
  return String(Number(pixels.toFixed(2)));
}
