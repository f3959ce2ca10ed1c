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
 * Puts the steps of the plan under its rows, each in the column of its year. Steps that stand at the same place in what is made of them
 * share a row, so that a row holds one formula as far as the model has one.
 */
export function placeYearSteps(
  steps: Calculation['yearSteps'],
  roles: ReadonlyMap<number, string>,
  { name, rows }: { readonly name: string; readonly rows: readonly YearRow[] },
  places: Map<number, CellPlace>,
): readonly YearStepRow[] {
  const made = new Map<string, { owner: number; row: number; nodes: (number | undefined)[] }>();
  const width = rows[0]?.nodes.length ?? 0;
  for (const { index, year, owner } of steps) {
    const wanted = roles.get(index) ?? String(index);
    // Two steps of one year never share a cell.
    const role = made.get(wanted)?.nodes[year] === undefined ? wanted : String(index);
    // A row between the rows of the plan and their steps holds the heading of the steps.
    const row = made.get(role)?.row ?? firstRow + rows.length + 2 + made.size;
    const found = made.get(role) ?? { owner, row, nodes: new Array<number | undefined>(width).fill(undefined) };
    made.set(role, found);
    found.nodes[year] = index;
    places.set(index, { sheet: name, row, column: firstYearColumn + year });
  }
  return [...made.values()].map(({ owner, nodes }) => ({ owner, nodes }));
}
