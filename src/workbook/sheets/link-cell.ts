import { nodeNamed } from '../../kernel/graph/graph.ts';
import { empty, formula } from '../cells.ts';
import type { ModelCells } from '../model/model-cells.ts';
import { numberForm } from '../number-form.ts';
import type { Cell, Look } from '../plan.ts';

/** A cell that shows a quantity of the model and follows it; empty where the case has no such quantity. */
export function linkCell(cells: ModelCells, id: string, sheet: string, look?: Look): Cell {
  const link = cells.link(id, sheet);
  if (link === null) return empty;
  const { unit, declaration } = nodeNamed(cells.open.model.graph, id);
  return formula(link.formula, link.result, numberForm(unit, declaration?.shownIn, cells.open.content.currency), look);
}
