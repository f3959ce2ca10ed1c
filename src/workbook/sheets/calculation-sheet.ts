import { Failure } from '../../kernel/evaluate/failure.ts';
import type { Node } from '../../kernel/graph/graph.ts';
import { failureOrigin } from '../../study/failure-origin.ts';
import { failureSentence } from '../../wording/failure-sentence.ts';
import { unitLabel } from '../../wording/unit-label.ts';
import { formula, heads, number, strong, text } from '../cells.ts';
import type { Verdict } from '../checks/verdict.ts';
import { roundingOff } from '../formulas/formula-reading.ts';
import type { ModelCells } from '../model/model-cells.ts';
import type { LaidRow, ModelLayout } from '../model/model-layout.ts';
import { numberForm } from '../number-form.ts';
import type { Cell, SheetPlan } from '../plan.ts';
import { framed } from './framed.ts';

const widths = [52, 40, 18, 20, 46, 80];

/** Quantities of the model in blocks, one a row with its formula. */
export function calculationSheet(
  cells: ModelCells,
  { name, title, rows }: ModelLayout['calculation'][number],
  verdict: Verdict,
): SheetPlan {
  return framed({
    name,
    title: `Calculation: ${title}`,
    says: 'One quantity a row. Formulas read other cells by name; each name is the id of the quantity in the program.',
    verdict,
    heads: heads('Quantity', 'Of', 'Value', 'Unit', 'Id', 'Note'),
    widths,
    rows: rows.map((row) => rowCells(cells, row, name)),
  });
}

function rowCells(cells: ModelCells, row: LaidRow, sheet: string): readonly Cell[] {
  if (row.kind === 'space') return [];
  if (row.kind === 'block') return [strong(row.title)];
  const node = cells.node(row.index);
  const owner = node.declaration ?? cells.node(cells.layout.owners[row.index] ?? row.index).declaration;
  const isStep = node.declaration === null;
  const { currency } = cells.open.content;
  const form = numberForm(node.unit, node.declaration?.shownIn, currency);
  return [
    text(isStep ? `   step towards: ${owner?.label ?? ''}` : (owner?.label ?? '')),
    text(owner?.where ?? ''),
    formula(cells.formula(row.index, sheet), cells.result(row.index), form),
    text(form === 'share' ? '%' : unitLabel(node.unit.text)),
    text(isStep ? '' : (owner?.id ?? '')),
    text(noteOf(cells, node)),
  ];
}

/** How it is worked out; or why it cannot be, with the figures as they were written. */
function noteOf(cells: ModelCells, node: Node): string {
  const value = cells.open.values.at(node);
  if (!(value instanceof Failure)) return node.declaration?.note ?? '';
  const origin = failureOrigin(cells.open.model.graph, value.at);
  return failureSentence(origin?.label ?? 'A step of it', value.reason, origin?.id);
}

/** Fixed numbers that say a unit, each once. */
export function fixedSheet(cells: ModelCells, verdict: Verdict): SheetPlan {
  const { fixed } = cells.layout;
  return framed({
    name: fixed.name,
    title: 'Fixed numbers',
    says: 'Numbers of definition and of nature, which hold whatever the case is. Counts without a unit, such as 12 months, stand in the formulas.',
    verdict,
    heads: heads('Fixed number', '', 'Value', 'Unit'),
    widths: [44, 4, 18, 24],
    rows: [
      [text('What binary numbers round off'), text(''), number(roundingOff, 'as typed')],
      ...fixed.nodes.map((index) => fixedCells(cells, index)),
    ],
  });
}

function fixedCells(cells: ModelCells, index: number): readonly Cell[] {
  const { operation, unit } = cells.node(index);
  const digits = operation.op === 'constant' ? operation.digits : '';
  const name = cells.layout.names.get(index) ?? '';
  return [text(name), text(''), number(Number(digits), 'as typed'), text(unitLabel(unit.text))];
}
