import type { Limit } from '../case/what-if.ts';
import { type InputDeclaration, inForce } from '../kernel/graph/input-declaration.ts';
import { type ContourPiece, zeroContour } from './contour.ts';
import { brokenInTable } from './limits/broken-in-table.ts';
import type { OpenCase } from './open-case.ts';
import { type MonthResults, monthResults } from './months/month-results.ts';
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
  /** The mill's own months, where the two sides are the prices they are of; none otherwise. */
  readonly points: readonly TablePoint[];
}

/** A month in a table: its place in columns and rows of the cells' middles. */
export interface TablePoint {
  readonly month: string;
  readonly place: readonly [x: number, y: number];
  readonly value: number;
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
  const months = monthsOn(open, resultId, acrossId, downId);
  const across = namedSide(open, acrossId, columns, months?.across);
  const down = namedSide(open, downId, rows, months?.down);
  if (across === null || down === null || acrossId === downId) return null;
  const { cells } = twoWay(open, resultId, across, down);
  return {
    result: resultId,
    across,
    down,
    cells,
    contour: contourOf(open, resultId, across, down),
    broken: brokenInTable(open, across, down),
    points: months === null ? [] : pointsOf(months, across, down),
  };
}

interface MonthsOnSides {
  readonly across: readonly number[];
  readonly down: readonly number[];
  readonly months: MonthResults['months'];
}

/** The months of the case, where these two inputs are the prices they are of, whichever stands across. */
function monthsOn(open: OpenCase, result: string, across: string, down: string): MonthsOnSides | null {
  const { months } = open.content;
  if (months === undefined) return null;
  const isUpright = months.pulp === across && months.recovered === down;
  if (!isUpright && !(months.pulp === down && months.recovered === across)) return null;
  const found = monthResults(open, result, months).months;
  const pulp = found.map((month) => month.pulp);
  const recovered = found.map((month) => month.recovered);
  return isUpright
    ? { across: pulp, down: recovered, months: found }
    : { across: recovered, down: pulp, months: found };
}

function pointsOf({ months, ...sides }: MonthsOnSides, across: Side, down: Side): readonly TablePoint[] {
  const place = ({ figures }: Side, figure: number): number =>
    ((figure - (figures[0] ?? 0)) / ((figures.at(-1) ?? 0) - (figures[0] ?? 0))) * (figures.length - 1);
  return months.map(({ month, value }, at) => ({
    month,
    place: [place(across, sides.across[at] ?? NaN), place(down, sides.down[at] ?? NaN)],
    value,
  }));
}

function namedSide({ model }: OpenCase, id: string, count: number, reach: readonly number[] = []): NamedSide | null {
  const input = model.graph.inputs.find((each) => each.id === id);
  const side = input === undefined ? null : tableSide(input, count, reach);
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
