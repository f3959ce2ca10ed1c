import type { Limit } from '../case/what-if.ts';
import { type InputDeclaration, inForce } from '../kernel/graph/input-declaration.ts';
import { type ContourPiece, zeroContour } from './contour.ts';
import { brokenInTable } from './limits/broken-in-table.ts';
import type { OpenCase } from './open-case.ts';
import { tableSide } from './table-side.ts';
import { type Side, spaced, twoWay } from './two-way.ts';

/** One side of a table with what is written on it. */
export interface NamedSide extends Side {
  readonly label: string;
  readonly where: string;
  readonly unit: string;
  /** Place of the figure in force among the figures. */
  readonly today: number;
}

/** A result over two inputs as it is drawn. */
export interface WhatIfTable {
  readonly result: string;
  readonly across: NamedSide;
  readonly down: NamedSide;
  /** `cells[row][column]`; NaN where the two figures cannot be true together. */
  readonly cells: readonly (readonly number[])[];
  /** Where the result is nothing, in columns and rows of the cells' middles. */
  readonly contour: readonly ContourPiece[];
  /** Limits that any route breaks in a cell: `broken[row][column]`. */
  readonly broken: readonly (readonly (readonly Limit[])[])[];
}

const fine = 51;

/** A table of a result over two inputs around the figures in force; null where one of them has no range to be spread over. */
export function whatIfTable(
  open: OpenCase,
  resultId: string,
  acrossId: string,
  downId: string,
  { columns, rows }: { readonly columns: number; readonly rows: number },
): WhatIfTable | null {
  const across = namedSide(open, acrossId, columns);
  const down = namedSide(open, downId, rows);
  if (across === null || down === null || acrossId === downId) return null;
  const { cells } = twoWay(open, resultId, across, down);
  return {
    result: resultId,
    across,
    down,
    cells,
    contour: contourOf(open, resultId, across, down),
    broken: brokenInTable(open, across, down),
  };
}

function namedSide({ model }: OpenCase, id: string, count: number): NamedSide | null {
  const input = model.graph.inputs.find((each) => each.id === id);
  const side = input === undefined ? null : tableSide(input, count);
  if (input === undefined || side === null) return null;
  return { ...side, ...wordsOf(input), today: todayIn(side, input) };
}

function wordsOf({ label, where, entryUnit }: InputDeclaration): Pick<NamedSide, 'label' | 'where' | 'unit'> {
  return { label, where: where ?? '', unit: entryUnit };
}

function todayIn({ figures }: Side, input: InputDeclaration): number {
  const figure = Number(inForce(input));
  const distances = figures.map((each) => Math.abs(each - figure));
  return distances.indexOf(Math.min(...distances));
}

/** The contour is drawn from a grid of its own, so that few cells do not make it coarse. */
function contourOf(open: OpenCase, resultId: string, across: Side, down: Side): readonly ContourPiece[] {
  const dense = (side: Side): Side => ({
    id: side.id,
    figures: spaced(side.figures[0] ?? 0, side.figures.at(-1) ?? 0, fine),
  });
  const { cells } = twoWay(open, resultId, dense(across), dense(down));
  const scale = (side: Side): number => (side.figures.length - 1) / (fine - 1);
  const place = ([x, y]: readonly [number, number]): readonly [number, number] => [x * scale(across), y * scale(down)];
  return zeroContour(cells).map(({ from, to }) => ({ from: place(from), to: place(to) }));
}
