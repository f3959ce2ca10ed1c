import type { Graph } from '../../kernel/graph/graph.ts';
import { cellReference } from '../addresses.ts';
import { formulaOf } from '../formulas/formula-of.ts';
import type { CellPlace } from '../plan.ts';
import type { Calculation } from './calculation-blocks.ts';
import { firstRow, firstYearColumn } from './geometry.ts';
import type { YearRow } from './year-rows.ts';

/** A row of steps towards the rows of the plan; undefined in years that have none of it. */
export interface YearStepRow {
  readonly owner: number;
  readonly nodes: readonly (number | undefined)[];
}

/**
 * Puts the steps of the plan under its rows, each in the column of its year. Steps that say the same of their years, seen from their own
 * column, share a row, so that a row holds one formula as far as the model has one.
 */
export function placeYearSteps(
  graph: Graph,
  steps: Calculation['yearSteps'],
  { name, rows }: { readonly name: string; readonly rows: readonly YearRow[] },
  places: Map<number, CellPlace>,
  names: ReadonlyMap<number, string>,
): readonly YearStepRow[] {
  const made: { owner: number; pattern: string; nodes: (number | undefined)[] }[] = [];
  const width = rows[0]?.nodes.length ?? 0;
  for (const { index, year, owner } of steps) {
    const column = firstYearColumn + year;
    const pattern = formulaOf(graph, index, (at) => {
      const place = places.get(at);
      if (place === undefined) return null;
      const isYear = place.sheet === name;
      return isYear
        ? `[${String(place.row)}|${String(place.column - column)}]`
        : (names.get(at) ?? cellReference(place, name));
    });
    let at = made.findIndex((row) => row.pattern === pattern && row.nodes[year] === undefined);
    if (at < 0) {
      at = made.length;
      made.push({ owner, pattern, nodes: new Array<number | undefined>(width).fill(undefined) });
    }
    made[at]!.nodes[year] = index;
    // A row between the rows of the plan and their steps holds the heading of the steps.
    places.set(index, { sheet: name, row: firstRow + rows.length + 2 + at, column });
  }
  return made.map(({ owner, nodes }) => ({ owner, nodes }));
}
