import { evaluateFloat, floatProgram } from '../../../src/kernel/evaluate/float.ts';
import type { OpenCase } from '../../../src/study/open-case.ts';
import { modelLayout } from '../../../src/workbook/model/model-layout.ts';
import type { Cell, CellPlace, FormulaCell, WorkbookPlan } from '../../../src/workbook/plan.ts';
import { SheetNames } from '../../../src/workbook/sheet-names.ts';
import { largestTerms } from '../../support/largest-terms.ts';

/** Reads a cell of a book that somebody else worked out; an error as its name, such as "#DIV/0!". */
export type Reader = (sheet: string, row: number, column: number) => unknown;

const closeEnough = 1e-9;

/** Every formula of a plan, where it stands. */
export function formulasOf({ sheets }: WorkbookPlan): readonly (CellPlace & { readonly cell: FormulaCell })[] {
  return sheets.flatMap(({ name, rows }) =>
    rows.flatMap((row, r) =>
      row.flatMap((cell, c) => (cell.kind === 'formula' ? [{ sheet: name, row: r + 1, column: c + 1, cell }] : [])),
    ),
  );
}

/**
 * What a book makes of the formulas otherwise than the program does, in words. A number may differ by a billionth of itself; one that is left
 * over from larger terms, by a billionth of the largest of them (what is left is rounding); of a check, by a billionth of what it is
 * measured by. An error may have another name, but an error it must be.
 */
export function disagreements(plan: WorkbookPlan, open: OpenCase, read: Reader): readonly string[] {
  const scales = scalesOf(open);
  const names = new Map(plan.names.map((name) => [name.name, place(name)]));
  return formulasOf(plan).flatMap(({ cell, ...at }) => {
    const found = read(at.sheet, at.row, at.column);
    const scale = scales.get(place(at)) ?? scales.get(names.get(cell.formula) ?? '') ?? measureOf(plan, at);
    if (agrees(cell, found, scale)) return [];
    return [`${place(at)} ${cell.formula.slice(0, 120)}: ${String(found)} instead of ${JSON.stringify(cell.result)}`];
  });
}

function agrees({ result }: FormulaCell, found: unknown, scale: number): boolean {
  if (typeof result === 'object') return typeof found === 'string' && /^#[A-Z/0!?]+$/u.test(found);
  if (typeof result === 'string') return (found ?? '') === result;
  return typeof found === 'number' && Math.abs(found - result) <= closeEnough * Math.max(Math.abs(result), scale);
}

const place = ({ sheet, row, column }: CellPlace): string => `${sheet}, row ${String(row)}, column ${String(column)}`;

/** The size that the rounding of each quantity is measured by, by its cell. */
function scalesOf(open: OpenCase): ReadonlyMap<string, number> {
  const { graph } = open.model;
  const terms = largestTerms(graph, evaluateFloat(floatProgram(graph)));
  // A choice whose other branch cannot be worked out has no largest term: it is held to a billionth of itself.
  const scaleOf = (index: number): number => (Number.isFinite(terms[index]) ? (terms[index] ?? 0) : 0);
  return new Map([...modelLayout(open, new SheetNames()).places].map(([index, at]) => [place(at), scaleOf(index)]));
}

/** A check stands beside what it is measured by. */
function measureOf(plan: WorkbookPlan, { sheet, row, column }: CellPlace): number {
  if (sheet !== 'Checks') return 0;
  const cell: Cell | undefined = plan.sheets.find(({ name }) => name === sheet)?.rows[row - 1]?.[column];
  return cell?.kind === 'formula' && typeof cell.result === 'number' ? cell.result : 0;
}
