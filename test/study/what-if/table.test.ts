import { describe, expect, it } from 'vitest';
import { zeroContour } from '../../../src/study/contour.ts';
import { ResultTape } from '../../../src/study/result-tape.ts';
import { tableSide } from '../../../src/study/table-side.ts';
import { twoWay } from '../../../src/study/two-way.ts';
import { whatIfTable } from '../../../src/study/what-if-table.ts';
import { plainInput } from '../../kernel/plain-input.ts';
import { open } from '../uncertainty/demonstration.ts';

const [pulp, paper] = ['material.bctmp.price', 'material.mixed.price'];
const size = { columns: 7, rows: 9 };

function side(value: string, low: string, high: string, count: number, allowed = {}): readonly number[] | undefined {
  const usual = { value, low, high, provenance: { status: 'invented', source: 'Invented' } } as const;
  return tableSide(plainInput('x', value, '1', { usual, allowed }), count)?.figures;
}

describe('the figures along one side of a table', () => {
  it('go in round steps through the figure in force', () => {
    expect(side('545', '430', '850', 7)).toEqual([445, 495, 545, 595, 645, 695, 745]);
  });

  it('hold the figure in force also where it lies beyond the range', () => {
    expect(side('1000', '430', '850', 7)?.at(-1)).toBe(1000);
  });

  it('stop where no figure can be true', () => {
    expect(Math.min(...(side('5', '0', '40', 9, { least: '0' }) ?? []))).toBe(0);
    expect(Math.max(...(side('95', '60', '100', 9, { most: '100' }) ?? []))).toBeLessThanOrEqual(100);
  });

  it('are no binary leftovers', () => {
    expect(side('0.3', '0.1', '0.5', 5)?.map(String)).toEqual(['0.1', '0.2', '0.3', '0.4', '0.5']);
  });
});

describe('a contour', () => {
  it('of a plane is its line, piece by piece', () => {
    // x + y - 1.5 over a grid of 3 x 3: from (1.5, 0) to (0, 1.5).
    const plane = [0, 1, 2].map((y) => [0, 1, 2].map((x) => x + y - 1.5));
    const pieces = zeroContour(plane);

    expect(pieces).toHaveLength(3);
    for (const [x, y] of pieces.flatMap(({ from, to }) => [from, to])) expect(x + y).toBeCloseTo(1.5, 12);
  });

  it('passes a saddle twice without crossing itself', () => {
    const pieces = zeroContour([
      [1, -1],
      [-1, 2],
    ]);

    // The middle, 0.25, belongs to the two corners above nothing: each corner below is cut off for itself.
    expect(pieces).toHaveLength(2);
    for (const { from, to } of pieces)
      expect(Math.abs(from[0] - from[1]) + Math.abs(to[0] - to[1])).toBeGreaterThan(0.5);
    expect(pieces.map(({ from, to }) => from[0] > from[1] === to[0] > to[1])).toEqual([true, true]);
  });

  it('leaves out meshes with a corner that is no number', () => {
    expect(
      zeroContour([
        [NaN, 1],
        [-1, 1],
      ]),
    ).toEqual([]);
  });
});

describe('a table of two inputs', () => {
  const table = whatIfTable(open, 'difference.total', pulp, paper, size);

  it('holds today where both figures are in force', () => {
    const today = table?.cells[table.down.today]?.[table.across.today];

    expect(table?.across.figures[table.across.today]).toBe(545);
    expect(table?.down.figures[table.down.today]).toBe(104);
    expect(today).toBeCloseTo(open.values.number('difference.total'), 9);
  });

  it('has a contour on which the result is nothing', () => {
    const tape = new ResultTape(open, 'difference.total');
    // Both prices move the difference in straight lines, so the sum of the single moves is the joint one.
    const at = ([x, y]: readonly [number, number]): number => {
      const between = (figures: readonly number[], place: number): number =>
        figures[0]! + ((figures.at(-1)! - figures[0]!) * place) / (figures.length - 1);
      return (
        tape.at(pulp, between(table!.across.figures, x)) +
        tape.at(paper, between(table!.down.figures, y)) -
        tape.baseValue
      );
    };

    expect(table?.contour.length).toBeGreaterThan(10);
    for (const piece of table?.contour ?? []) expect(at(piece.from)).toBeCloseTo(0, 6);
  });

  it('names in each cell the limits that are broken there, and none where the cell cannot be', () => {
    const shares = whatIfTable(open, 'difference.total', 'recovered.mixed.share', paper, size);
    const first = shares?.broken[0] ?? [];
    const cells = shares?.cells[0] ?? [];

    expect(first.some((limits) => limits.some(({ id }) => id === 'ash'))).toBe(true);
    expect(first[0]).toEqual([]);
    cells.forEach((cell, column) => {
      if (Number.isNaN(cell)) expect(first[column]).toEqual([]);
    });
  });

  it('is none for an input against itself', () => {
    expect(whatIfTable(open, 'difference.total', pulp, pulp, size)).toBeNull();
  });

  it('goes up to 101 by 101', () => {
    const figures = Array.from({ length: 101 }, (_, k) => 400 + k);
    const { cells } = twoWay(open, 'difference.total', { id: pulp, figures }, { id: paper, figures });

    expect([cells.length, cells[100]?.length]).toEqual([101, 101]);
    expect(cells.flat().every(Number.isFinite)).toBe(true);
  });
});
