import { unitLabel } from '../../wording/unit-label.ts';
import { empty, heads, note, number, strong, text } from '../cells.ts';
import type { Verdict } from '../checks/verdict.ts';
import type { ModelCells } from '../model/model-cells.ts';
import type { Cell, SheetPlan } from '../plan.ts';
import { framed } from './framed.ts';

/** Lines left for the reader. */
const blankLines = 30;
const blank: Cell = { kind: 'entry', value: null, form: 'as typed' };

/** What the case changed against the program's defaults, and lines for what its readers change. */
export function changeLogSheet(cells: ModelCells, name: string, verdict: Verdict): SheetPlan {
  const given = cells.open.model.graph.inputs.filter(
    (input) => input.given !== null && input.given.value !== input.usual.value,
  );
  return framed({
    name,
    title: 'Change log',
    says: 'Above, what to write down when a figure is changed in this workbook; below, what the case changed against the defaults of the program.',
    verdict,
    heads: heads('What', 'Of', 'Before', 'After', 'Unit', 'By whom and when', 'Why, or the source'),
    widths: [46, 38, 14, 14, 18, 26, 80],
    rows: [
      ...Array.from({ length: blankLines }, () => Array.from({ length: 7 }, () => blank)),
      [],
      [strong('Given in the case')],
      ...(given.length === 0 ? [[note('Nothing: every figure is a default.')]] : []),
      ...given.map((input) => [
        text(input.label),
        text(input.where ?? ''),
        input.usual.value === null ? empty : number(Number(input.usual.value), 'as typed'),
        number(Number(input.given?.value), 'as typed'),
        text(unitLabel(input.entryUnit)),
        empty,
        text(input.given?.provenance.source ?? ''),
      ]),
    ],
  });
}
