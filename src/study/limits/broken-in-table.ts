import type { Limit } from '../../case/what-if.ts';
import type { OpenCase } from '../open-case.ts';
import { type Side, twoWay } from '../two-way.ts';
import { isKept, watchedLimits, yearIds } from './watched-limits.ts';

/** Limits that any route breaks in each cell of a table: `broken[row][column]`. */
export function brokenInTable(open: OpenCase, across: Side, down: Side): readonly (readonly (readonly Limit[])[])[] {
  const watched = watchedLimits(open);
  const none = down.figures.map(() => across.figures.map((): readonly Limit[] => []));
  if (watched.length === 0) return none;
  const cellsOf = (id: string): ((row: number, column: number) => number) => {
    const { cells } = twoWay(open, id, across, down);
    return (row, column) => cells[row]?.[column] ?? NaN;
  };
  const [tonnes, hours] = [cellsOf(yearIds[0]), cellsOf(yearIds[1])];
  const judged = watched.map(({ limit, resultId, reading }) => {
    const result = cellsOf(resultId);
    // What cannot be worked out breaks nothing: the cell itself says that it cannot be.
    const isBroken = (row: number, column: number): boolean => {
      const value = reading(result(row, column), tonnes(row, column), hours(row, column));
      return !Number.isNaN(value) && !isKept(limit, value);
    };
    return { limit, isBroken };
  });
  return none.map((cells, row) =>
    cells.map((_, column) => [
      ...new Set(judged.filter(({ isBroken }) => isBroken(row, column)).map(({ limit }) => limit)),
    ]),
  );
}
