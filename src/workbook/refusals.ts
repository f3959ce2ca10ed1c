import type { Cell, WorkbookPlan } from './plan.ts';

/** As many characters as a formula holds in every spreadsheet since 2007. */
const longestFormula = 8192;

/**
 * Refuses what the library would let through and a spreadsheet would call damaged: numbers that are not finite, sheet names it cannot hold,
 * names that could be taken for cells, and formulas that are too long. A plan that holds any is a fault of the program, and thrown.
 */
export function refuseDamage({ sheets, names }: WorkbookPlan): void {
  refuseSheetNames(sheets.map((sheet) => sheet.name));
  refuseCellNames(names.map(({ name }) => name));
  for (const { rows } of sheets) for (const row of rows) for (const cell of row) refuseCell(cell);
}

/** 1 to 31 characters, none of \ / ? * [ ] :, no apostrophe (which the library leaves bare in print areas), each once however it is capitalised. */
function refuseSheetNames(names: readonly string[]): void {
  const met = new Set<string>();
  for (const name of names) {
    const isLegal = name.length >= 1 && name.length <= 31 && !/[\\/?*[\]:'!]/u.test(name);
    if (!isLegal || met.has(name.toLowerCase())) throw new Error(`Not a sheet name: "${name}"`);
    met.add(name.toLowerCase());
  }
}

/** Letters, digits and at least one underscore, so that no name is a cell in any spreadsheet; each once however it is capitalised. */
function refuseCellNames(names: readonly string[]): void {
  const met = new Set<string>();
  for (const name of names) {
    const isLegal = /^[A-Za-z_][A-Za-z0-9_]*$/u.test(name) && name.includes('_') && name.length <= 255;
    if (!isLegal || met.has(name.toLowerCase())) throw new Error(`Not a name of a cell: "${name}"`);
    met.add(name.toLowerCase());
  }
}

function refuseCell(cell: Cell): void {
  const value =
    cell.kind === 'formula' ? cell.result : cell.kind === 'empty' || cell.kind === 'text' ? null : cell.value;
  if (typeof value === 'number' && !Number.isFinite(value))
    throw new Error('A number that is not finite cannot stand in a workbook');
  if (
    cell.kind === 'formula' &&
    (cell.formula === '' || /^\s*=/u.test(cell.formula) || cell.formula.length > longestFormula)
  )
    throw new Error(`Not a formula: "${cell.formula.slice(0, 100)}"`);
}
