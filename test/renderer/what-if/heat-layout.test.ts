import { describe, expect, it } from 'vitest';
import { type CellGrid, cellUnder, middleAt } from '../../../renderer/screens/what-if/table/cell-grid.ts';
import { cellPaths } from '../../../renderer/screens/what-if/table/cell-paths.ts';
import { layOutHeat } from '../../../renderer/screens/what-if/table/heat-layout.ts';
import { sidePattern } from '../../../renderer/screens/what-if/table/side-pattern.ts';
import { sideFigures, writtenPlaces } from '../../../renderer/screens/what-if/table/side-figures.ts';
import { largestSize, tintOf } from '../../../renderer/screens/what-if/table/tint.ts';
import { landfill, plane, smallTable } from './tables.ts';

const grid: CellGrid = { left: 10, top: 20, width: 300, height: 60, columns: 3, rows: 2 };

describe('tints', () => {
  it('go in thirds of the largest size, centred on nothing', () => {
    const steps = [1, 30, 31, 60, 61, 90].map((value) => tintOf(value, 90, true)?.step);
    expect(steps).toEqual([1, 1, 2, 2, 3, 3]);
    expect(tintOf(-61, 90, true)).toEqual({ side: 'with', step: 3 });
  });

  it('change sides where the route compared wins above nothing', () => {
    expect([-61, -1, 1, 61].map((value) => tintOf(value, 90, false)?.side)).toEqual(['base', 'base', 'with', 'with']);
    expect(tintOf(61, 90, false)).toEqual({ side: 'with', step: 3 });
  });

  it('give nothing to nothing and to what cannot be', () => {
    expect(tintOf(0, 90, true)).toBeNull();
    expect(tintOf(Number.NaN, 90, true)).toBeNull();
    expect(largestSize([[Number.NaN, -90], [30]])).toBe(90);
  });

  it('never tell the routes apart by colour alone', () => {
    expect(sidePattern('with', { with: 'recovered', base: 'virgin' })).toBe('fleck');
    expect(sidePattern('base', { with: 'recovered', base: 'virgin' })).toBeNull();
    expect(sidePattern('base', { with: 'virgin', base: 'recovered' })).toBe('fleck');
    expect(sidePattern('with', { with: 'recovered', base: 'recovered' })).toBe('dash');
  });
});

describe('places in the map', () => {
  it('let figures rise upward, with the contour counted from the middles of cells', () => {
    // Cells are 100 by 30: the first row is the lower one, its middle at 20 + 30 + 15.
    expect(middleAt(grid, [0, 0])).toEqual([60, 65]);
    expect(middleAt(grid, [2, 1])).toEqual([260, 35]);
    expect(middleAt(grid, [0.5, 0.5])).toEqual([110, 50]);
  });

  it('find the cell under a point, and none outside', () => {
    expect(cellUnder(grid, 60, 65)).toEqual({ row: 0, column: 0 });
    expect(cellUnder(grid, 309, 21)).toEqual({ row: 1, column: 2 });
    expect(cellUnder(grid, 5, 30)).toBeNull();
    expect(cellUnder(grid, 60, 81)).toBeNull();
  });

  it('join neighbours of a kind in a row to one box', () => {
    const paths = cellPaths(grid, (row, column) => (row === 0 && column < 2 ? 'a' : row === 1 ? 'b' : ''));
    expect([...paths]).toEqual([
      ['a', 'M10 50H210V80H10Z'],
      ['b', 'M10 20H310V50H10Z'],
    ]);
  });
});

describe('the map', () => {
  it('writes a number into each cell, marks broken limits at the corner and today with an outline', () => {
    const layout = layOutHeat(smallTable, grid, String, true);

    expect(layout.numbers.map(({ text }) => text)).toEqual(['-90', '-30', '', '-60', '0', '30']);
    expect(layout.numbers.find(({ isToday }) => isToday)?.text).toBe('-60');
    expect([...layout.tints.keys()].sort()).toEqual(['base-1', 'even', 'void', 'with-1', 'with-2', 'with-3']);
    // The corner of the right upper cell, one pixel inside: from 302 to 309 across, and 7 down.
    expect(layout.broken).toEqual({ path: 'M302 21h7v7Z', isCorner: true });
    expect(layout.today).toEqual({ x: 10, y: 20, width: 100, height: 30 });
    expect(layout.contour).toBe('M160.0 35.0L210.0 65.0');
  });

  it('dresses cells and their patterns as the sides that win there, which a present value turns round', () => {
    const layout = layOutHeat(smallTable, grid, String, false);

    expect([...layout.tints.keys()].sort()).toEqual(['base-1', 'base-2', 'base-3', 'even', 'void', 'with-1']);
    // The only cell above nothing is the right upper one.
    expect(layout.sides.get('with')).toBe('M210 20H310V50H210Z');
  });

  it('leaves numbers out where one of them would not fit, and stripes cells that are too small for a corner', () => {
    expect(layOutHeat(smallTable, { ...grid, width: 60 }, String, true).numbers).toEqual([]);
    const low = layOutHeat(smallTable, { ...grid, height: 20 }, String, true);
    expect(low.numbers).toEqual([]);
    expect(low.broken).toEqual({ path: 'M210 20H310V30H210Z', isCorner: false });
    expect(low.seams).toBe('');
  });

  it('draws ten thousand cells with few paths and few boxes', () => {
    const table = plane(101);
    const layout = layOutHeat(table, { ...grid, columns: 101, rows: 101 }, String, true);
    const boxes = [...layout.tints.values()].join('').match(/M/gu)?.length ?? 0;

    expect(layout.tints.size).toBeLessThanOrEqual(7);
    // Along a row a plane passes each of seven kinds of tint at most once.
    expect(boxes).toBeLessThanOrEqual(7 * 101);
    expect(table.broken.flat(2)).toContain(landfill);
  });
});

describe('figures along the sides', () => {
  it('carry as many decimals as the longest needs', () => {
    expect(sideFigures({ figures: [1, 1.25, 1.5] }, 'de')).toEqual(['1,00', '1,25', '1,50']);
    expect(sideFigures({ figures: [0.1 + 0.2, 0.4] }, 'en')).toEqual(['0.3', '0.4']);
  });

  it('are written every so often, counted from today', () => {
    expect(writtenPlaces(9, 4, 25, 18)).toEqual([0, 1, 2, 3, 4, 5, 6, 7, 8]);
    // Four pixels a row and 18 for a figure: every fifth.
    expect(writtenPlaces(12, 6, 4, 18)).toEqual([1, 6, 11]);
  });
});
