import { nodeNamed } from '../../kernel/graph/graph.ts';
import { type Swing, sensitivity } from '../../study/sensitivity.ts';
import { whatIfTable } from '../../study/what-if-table.ts';
import { unitLabel } from '../../wording/unit-label.ts';
import { cellAddress, cellReference } from '../addresses.ts';
import { empty, formula, heads, note, number, strong, text, told } from '../cells.ts';
import type { Verdict } from '../checks/verdict.ts';
import { firstRow, inputColumns } from '../model/geometry.ts';
import type { ModelCells } from '../model/model-cells.ts';
import { inputRow } from '../model/model-layout.ts';
import { numberForm } from '../number-form.ts';
import type { Cell, NumberForm, SheetPlan } from '../plan.ts';
import { barFormula, barText } from './bar-formula.ts';
import { baseRowCount, baseRows } from './base-rows.ts';
import { framed } from './framed.ts';

const columns = { swing: 10 } as const;
const cellsAcross = 7;

/** Each input moved alone over its range, largest swing first; and the two largest moved together. */
export function sensitivitySheet(cells: ModelCells, name: string, verdict: Verdict): SheetPlan {
  const { open } = cells;
  const { totalId } = open.model.difference;
  const { judged, conventional } = sensitivity(open, totalId);
  const { unit } = nodeNamed(open.model.graph, totalId);
  const form = numberForm(unit, undefined, open.content.currency);
  const start = firstRow + baseRowCount;
  const swingRows = (swings: readonly Swing[], from: number): readonly (readonly Cell[])[] =>
    swings.map((swing, at) => swingCells(cells, swing, swings, from, from + at, form));
  return framed({
    name,
    title: 'Sensitivity',
    says: 'Results of the program at the moment of writing: they do not follow the inputs. Only the first figure does.',
    verdict,
    heads: heads(
      'Input',
      'Figure now',
      'Unit',
      'Of',
      'Figure then',
      'Low',
      'High',
      `At low, ${unitLabel(unit.text)}`,
      `At high, ${unitLabel(unit.text)}`,
      'Swing',
      '% by %',
      'Size of the swing',
    ),
    widths: [46, 14, 18, 36, 12, 12, 12, 14, 14, 12, 10, 46],
    rows: [
      ...baseRows(cells, totalId, name, verdict),
      ...swingRows(judged, start),
      [],
      [strong('Moved by a fifth either way, for want of a known range')],
      ...swingRows(conventional, start + judged.length + 2),
      [],
      ...twoWayRows(cells, judged, form),
    ],
    frozenColumns: 1,
  });
}

function swingCells(
  cells: ModelCells,
  swing: Swing,
  all: readonly Swing[],
  first: number,
  row: number,
  form: NumberForm,
): readonly Cell[] {
  const range = `${cellAddress(first, columns.swing)}:${cellAddress(first + all.length - 1, columns.swing)}`;
  const { inputs } = cells.layout;
  const figure = { sheet: inputs.name, row: inputRow(cells.layout, swing), column: inputColumns.value };
  return [
    text(swing.label),
    formula(cellReference(figure, ''), swing.figure, 'as typed'),
    text(unitLabel(swing.unit)),
    text(swing.where),
    told(swing.figure, 'as typed'),
    told(swing.low, 'as typed'),
    told(swing.high, 'as typed'),
    told(swing.atLow, form),
    told(swing.atHigh, form),
    told(swing.swing, form),
    swing.elasticity === null ? empty : told(swing.elasticity, 'quantity'),
    formula(
      barFormula(cellAddress(row, columns.swing), range),
      barText(
        swing.swing,
        all.map((each) => each.swing),
      ),
      'as typed',
      'bar',
    ),
  ];
}

/** The result over the two inputs that move it most, each over its range. */
function twoWayRows(
  { open }: ModelCells,
  [one, other]: readonly Swing[],
  form: NumberForm,
): readonly (readonly Cell[])[] {
  if (one === undefined || other === undefined) return [];
  const { totalId } = open.model.difference;
  const table = whatIfTable(open, totalId, one.id, other.id, { columns: cellsAcross, rows: cellsAcross });
  if (table === null) return [];
  const named = ({ label, where, unit }: Swing): string =>
    [label, where, unitLabel(unit)].filter((part) => part !== '').join(', ');
  return [
    [strong('Two inputs together')],
    [text(`Across: ${named(one)}`)],
    [text(`Down: ${named(other)}`)],
    [
      note('A result of the program, as above.'),
      ...table.across.figures.map((figure) => number(figure, 'as typed', 'strong')),
    ],
    ...table.down.figures.map((figure, row) => [
      number(figure, 'as typed', 'strong'),
      ...(table.cells[row] ?? []).map((value) => told(value, form)),
    ]),
  ];
}
