import { Failure } from '../../kernel/evaluate/failure.ts';
import { type Node, nodeAt } from '../../kernel/graph/graph.ts';
import type { OpenCase } from '../../study/open-case.ts';
import { cellReference } from '../addresses.ts';
import { formulaOf } from '../formulas/formula-of.ts';
import { roundingName } from '../formulas/formula-reading.ts';
import { firstRow, valueColumn } from './geometry.ts';
import type { CellError, CellName } from '../plan.ts';
import type { ModelLayout } from './model-layout.ts';

/** The model as cells: which formula stands for each node on a sheet, and what the program makes of it. */
export class ModelCells {
  readonly open: OpenCase;
  readonly layout: ModelLayout;

  constructor(open: OpenCase, layout: ModelLayout) {
    this.open = open;
    this.layout = layout;
  }

  node(index: number): Node {
    return nodeAt(this.open.model.graph, index);
  }

  /** How a formula on the sheet `from` reads a node: by its name, years of the plan by their cells; null where it has no cell of its own. */
  reference(index: number, from: string): string | null {
    const place = this.layout.places.get(index);
    if (place === undefined) return null;
    const name = place.sheet === this.layout.years?.name ? undefined : this.layout.names.get(index);
    return name ?? cellReference(place, from);
  }

  formula(index: number, sheet: string): string {
    return formulaOf(this.open.model.graph, index, (at) => this.reference(at, sheet));
  }

  result(index: number): number | CellError {
    const value = this.open.values.at(this.node(index));
    return value instanceof Failure ? { error: '#N/A' } : value.toNumber();
  }

  /** A formula that reads a quantity by its id; null where the case has none. */
  link(id: string, sheet: string): { readonly formula: string; readonly result: number | CellError } | null {
    const index = this.open.model.graph.positions.get(id);
    const formula = index === undefined ? null : this.reference(index, sheet);
    return index === undefined || formula === null ? null : { formula, result: this.result(index) };
  }

  /** Names of all cells that have one. */
  names(): readonly CellName[] {
    const found = new Map<string, CellName>();
    for (const [index, name] of this.layout.names) {
      const place = this.layout.places.get(index);
      if (place !== undefined) found.set(name, { name, ...place });
    }
    const rounding = { name: roundingName, sheet: this.layout.fixed.name, row: firstRow, column: valueColumn };
    return [rounding, ...found.values()];
  }
}
