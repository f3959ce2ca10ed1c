import type { WhatIfTable } from '../../../../src/index.ts';
import { type CellGrid, columnAt, middleAt, rowAt } from './cell-grid.ts';
import { cellPaths, cornerPath, seamPath } from './cell-paths.ts';
import { winningSide } from '../tornado/winning-side.ts';
import { largestSize, tintOf } from './tint.ts';

/** What a table looks like at one size, in pixels from its left top corner. */
export interface HeatLayout {
  readonly grid: CellGrid;
  /** "with-1" to "base-3", "even", and "void" where the two figures cannot be true together. */
  readonly tints: ReadonlyMap<string, string>;
  /** All cells of one side, for its pattern. */
  readonly sides: ReadonlyMap<string, string>;
  readonly seams: string;
  readonly contour: string;
  /** Corners where cells are large enough to carry one, else whole cells. */
  readonly broken: { readonly path: string; readonly isCorner: boolean };
  readonly today: { readonly x: number; readonly y: number; readonly width: number; readonly height: number };
  readonly numbers: readonly CellNumber[];
  readonly points: readonly HeatPoint[];
}

/** A month on the map. */
export interface HeatPoint {
  readonly key: string;
  readonly x: number;
  readonly y: number;
  /** "2024-03: −41.20". */
  readonly title: string;
}

export interface CellNumber {
  readonly key: string;
  readonly x: number;
  readonly y: number;
  readonly text: string;
  readonly tint: string;
  readonly isToday: boolean;
}

const letterWidth = 7.6;
const leastNumberHeight = 16;
const leastCorner = 14;
const leastOutline = 9;

/** `winsBelow` says whether the route compared wins in cells below nothing. */
export function layOutHeat(
  table: WhatIfTable,
  grid: CellGrid,
  text: (value: number) => string,
  winsBelow: boolean,
): HeatLayout {
  const { cells, across, down } = table;
  const largest = largestSize(cells);
  const valueAt = (row: number, column: number): number => cells[row]?.[column] ?? NaN;
  const tintAt = (row: number, column: number): string => {
    const tint = tintOf(valueAt(row, column), largest, winsBelow);
    return tint === null ? (valueAt(row, column) === 0 ? 'even' : 'void') : `${tint.side}-${tint.step}`;
  };
  const isBroken = (row: number, column: number): boolean => (table.broken[row]?.[column]?.length ?? 0) > 0;
  const cell = { width: grid.width / grid.columns, height: grid.height / grid.rows };
  const isCorner = Math.min(cell.width, cell.height) >= leastCorner;
  const point = (place: readonly [number, number]): string =>
    middleAt(grid, place)
      .map((pixels) => pixels.toFixed(1))
      .join(' ');
  return {
    grid,
    tints: cellPaths(grid, tintAt),
    sides: cellPaths(grid, (row, column) => winningSide(valueAt(row, column), winsBelow) ?? ''),
    seams: cell.height >= leastNumberHeight ? seamPath(grid) : '',
    contour: table.contour.map(({ from, to }) => `M${point(from)}L${point(to)}`).join(''),
    broken: {
      path: isCorner
        ? cornerPath(grid, 7, isBroken)
        : (cellPaths(grid, (row, column) => (isBroken(row, column) ? 'broken' : '')).get('broken') ?? ''),
      isCorner,
    },
    today: outline(grid, across.today, down.today),
    numbers: numbersOf(table, grid, text, tintAt),
    points: pointsOf(table, grid, text),
  };
}

function pointsOf({ points }: WhatIfTable, grid: CellGrid, text: (value: number) => string): readonly HeatPoint[] {
  return points.map(({ month, place, value }, at) => {
    const [x, y] = middleAt(grid, place);
    const found = Number.isFinite(value) ? text(value) : 'cannot be';
    return { key: String(at), x, y, title: `${month}: ${found}` };
  });
}

/** Today's cell; a small one is outlined from a little way off. */
function outline(grid: CellGrid, column: number, row: number): HeatLayout['today'] {
  const [width, height] = [grid.width / grid.columns, grid.height / grid.rows].map((size) =>
    Math.max(size, leastOutline),
  );
  const [x, y] = middleAt(grid, [column, row]);
  return { x: x - (width ?? 0) / 2, y: y - (height ?? 0) / 2, width: width ?? 0, height: height ?? 0 };
}

/** Numbers are written where every one of them fits its cell. */
function numbersOf(
  { cells, across, down }: WhatIfTable,
  grid: CellGrid,
  text: (value: number) => string,
  tintAt: (row: number, column: number) => string,
): readonly CellNumber[] {
  const height = grid.height / grid.rows;
  if (height < leastNumberHeight || grid.width / grid.columns < 3 * letterWidth) return [];
  const texts = cells.map((row) => row.map((value) => (Number.isFinite(value) ? text(value) : '')));
  const longest = Math.max(...texts.flat().map((each) => each.length));
  if (longest * letterWidth + 6 > grid.width / grid.columns) return [];
  return texts.flatMap((row, r) =>
    row.map((each, c) => ({
      key: `${r} ${c}`,
      x: columnAt(grid, c + 0.5),
      y: rowAt(grid, r) + height / 2 + 5,
      text: each,
      tint: tintAt(r, c),
      isToday: c === across.today && r === down.today,
    })),
  );
}
