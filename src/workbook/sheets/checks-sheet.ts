import { cellAddress, sheetReference } from '../addresses.ts';
import { empty, formula, heads, number, strong, text } from '../cells.ts';
import { type CheckRow, isKept, tolerance } from '../checks/check-row.ts';
import { modelChecks } from '../checks/model-checks.ts';
import { type ProgramCheck, programChecks } from '../checks/program-checks.ts';
import { type Verdict, brokenWords, keptWords, verdictOf } from '../checks/verdict.ts';
import { errorCount, presentValueCheck } from '../checks/workbook-checks.ts';
import { firstRow, inputColumns } from '../model/geometry.ts';
import type { ModelCells } from '../model/model-cells.ts';
import type { Cell, CellName, SheetPlan } from '../plan.ts';
import { framed } from './framed.ts';

/** The sheet of checks, what all of them come to, and the names of the cells that say so. */
export interface ChecksSheet {
  readonly sheet: SheetPlan;
  readonly verdict: Verdict;
  readonly names: readonly CellName[];
}

const columns = { offBy: 3, measure: 4, kept: 5, exported: 7 } as const;
/** Rows before the first check: the tolerance, the count of changed inputs, all checks at once and in words, errors, and a space. */
const factRows = 6;

export function checksSheet(cells: ModelCells, name: string): ChecksSheet {
  const laws = [...modelChecks(cells, name), ...presentValueCheck(cells, name)];
  const errors = errorCount(cells);
  const results = programChecks(cells, name);
  const verdict = verdictOf(cells.layout, laws.every(isKept));
  const start = firstRow + factRows;
  const last = start + laws.length + results.length - 1;
  const kept = `${cellAddress(start, columns.kept)}:${cellAddress(last, columns.kept)}`;
  const facts: readonly (readonly Cell[])[] = [
    [text('Accepted difference, as a share'), empty, number(tolerance, 'as typed')],
    [text('Inputs changed in this workbook'), empty, formula(changedFormula(cells), 0, 'whole')],
    [strong('All checks'), empty, formula(`IF(COUNTIF(${kept},1)=ROWS(${kept}),1,0)`, Number(verdict.isKept), 'whole')],
    [
      empty,
      empty,
      formula(`IF(${verdict.allName}=1,"${keptWords}","${brokenWords}")`, verdict.words, 'as typed', 'verdict'),
    ],
    [text('Quantities that cannot be worked out'), empty, formula(errors.formula, errors.result, 'whole')],
    [],
  ];
  const sheet = framed({
    name,
    title: 'Checks',
    says: 'Each must come to nothing, measured by what stands beside it. 1 is kept, 0 is broken.',
    verdict,
    heads: heads('Check', 'Of', 'Off by', 'Measured by', 'Kept', 'In words', 'Written by the program'),
    widths: [46, 40, 18, 18, 8, 12, 24],
    rows: [
      ...facts,
      ...laws.map((law, at) => lawRow(law, start + at, verdict)),
      ...results.map((result, at) => resultRow(result, start + laws.length + at, verdict)),
    ],
  });
  const named = (each: string, row: number): CellName => ({ name: each, sheet: name, row, column: columns.offBy });
  return {
    sheet,
    verdict,
    names: [
      named(verdict.toleranceName, firstRow),
      named(verdict.changedName, firstRow + 1),
      named(verdict.allName, firstRow + 2),
      named(verdict.wordsName, firstRow + 3),
    ],
  };
}

function changedFormula({ layout }: ModelCells): string {
  const rows = [...layout.inputs.rows.values()];
  const [first, last] = [Math.min(...rows), Math.max(...rows)];
  const column = inputColumns.changed;
  return `SUM(${sheetReference(layout.inputs.name)}!${cellAddress(first, column)}:${cellAddress(last, column)})`;
}

function lawRow(law: CheckRow, row: number, verdict: Verdict): readonly Cell[] {
  const { offBy, measure } = law;
  const result = (each: number): number | { readonly error: '#N/A' } =>
    Number.isFinite(each) ? each : { error: '#N/A' };
  return [
    text(law.label),
    text(law.where),
    formula(offBy.formula, result(offBy.result), 'quantity'),
    formula(measure.formula, result(measure.result), 'quantity'),
    ...keptCells(row, isKept(law), verdict),
  ];
}

/** Once an input is changed here, the program's results are those of another case and bind no more; an error is one all the same. */
function resultRow(
  { label, where, formula: link, exported }: ProgramCheck,
  row: number,
  verdict: Verdict,
): readonly Cell[] {
  const written = cellAddress(row, columns.exported);
  return [
    text(`${label}: as the program has it, while no input is changed`),
    text(where),
    formula(`IF(${verdict.changedName}=0,${link}-${written},${link}-${link})`, 0, 'quantity'),
    formula(`ABS(${written})`, Math.abs(exported), 'quantity'),
    ...keptCells(row, true, verdict),
    number(exported, 'quantity', 'program'),
  ];
}

function keptCells(row: number, kept: boolean, { toleranceName }: Verdict): readonly Cell[] {
  const [off = '', by = '', is = ''] = [columns.offBy, columns.measure, columns.kept].map((column) =>
    cellAddress(row, column),
  );
  const isNumber = `AND(ISNUMBER(${off}),ISNUMBER(${by}))`;
  return [
    formula(`IF(${isNumber},IF(ABS(${off})<=${toleranceName}*ABS(${by}),1,0),0)`, Number(kept), 'whole'),
    formula(`IF(${is}=1,"kept","broken")`, kept ? 'kept' : 'broken', 'as typed', 'verdict'),
  ];
}
