import { accountIdOf, accountPerYearIdOf, accounts } from '../../paper/accounts.ts';
import { cellAddress } from '../addresses.ts';
import { empty, formula, heads, strong, text } from '../cells.ts';
import type { Verdict } from '../checks/verdict.ts';
import { firstRow } from '../model/geometry.ts';
import type { ModelCells } from '../model/model-cells.ts';
import type { Cell, SheetPlan } from '../plan.ts';
import { barFormula, barText } from './bar-formula.ts';
import { framed } from './framed.ts';
import { linkCell } from './link-cell.ts';

const columns = { difference: 4, level: 6 } as const;

/** From the whole cost of the one route to that of the other, account by account; below it the lines that face each other. */
export function bridgeSheet(cells: ModelCells, name: string, verdict: Verdict): SheetPlan {
  const { content, model } = cells.open;
  const { baseId, withId } = model.difference;
  const [base, other] = [baseId, withId].map((id) => content.routes.find((route) => route.id === id)?.label ?? id);
  const per = `${content.currency}/t`;
  return framed({
    name,
    title: `Bridge from ${base ?? ''} to ${other ?? ''}`,
    says: 'Each step is what an account adds to, or takes from, the whole cost of a tonne. Bars show the size of a step, whichever way it goes.',
    verdict,
    heads: heads(
      'Step',
      `${base ?? ''}, ${per}`,
      `${other ?? ''}, ${per}`,
      `Step, ${per}`,
      `Step, ${content.currency}/year`,
      `Level, ${per}`,
      'Size of the step',
    ),
    widths: [46, 18, 18, 16, 20, 16, 46],
    rows: [...steps(cells, name), [], [strong('Line by line')], ...facing(cells, name)],
    frozenColumns: 1,
  });
}

function steps(cells: ModelCells, name: string): readonly (readonly Cell[])[] {
  const { difference } = cells.open.model;
  const { baseId, withId } = difference;
  const values = accounts.map(({ id }) => valueOf(cells, accountIdOf('difference', id)));
  const [first, last] = [firstRow + 1, firstRow + accounts.length];
  const range = `${cellAddress(first, columns.difference)}:${cellAddress(last, columns.difference)}`;
  let level = valueOf(cells, `${baseId}.cost.total`);
  const rows = accounts.map(({ id, label }, at): readonly Cell[] => {
    const row = first + at;
    const step = values[at] ?? NaN;
    level += step;
    return [
      text(label),
      linkCell(cells, accountIdOf(baseId, id), name),
      linkCell(cells, accountIdOf(withId, id), name),
      linkCell(cells, accountIdOf('difference', id), name),
      linkCell(cells, accountPerYearIdOf('difference', id), name),
      formula(
        `${cellAddress(row - 1, columns.level)}+${cellAddress(row, columns.difference)}`,
        orError(level),
        'money',
      ),
      Number.isFinite(step) && values.every(Number.isFinite)
        ? formula(barFormula(cellAddress(row, columns.difference), range), barText(step, values), 'as typed', 'bar')
        : empty,
    ];
  });
  const start = linkCell(cells, `${baseId}.cost.total`, name, 'strong');
  return [
    [strong('Whole cost at the start'), start, empty, empty, empty, start],
    ...rows,
    [
      strong('Whole cost at the end'),
      linkCell(cells, `${baseId}.cost.total`, name, 'strong'),
      linkCell(cells, `${withId}.cost.total`, name, 'strong'),
      linkCell(cells, difference.totalId, name, 'strong'),
      linkCell(cells, difference.totalPerYearId, name, 'strong'),
      formula(cellAddress(last, columns.level), orError(level), 'money', 'strong'),
    ],
  ];
}

function facing(cells: ModelCells, name: string): readonly (readonly Cell[])[] {
  return cells.open.model.difference.rows.map((row): readonly Cell[] => {
    const labels = [...new Set([row.base?.label, row.with?.label].filter((label) => label !== undefined))];
    const account = accounts.find(({ id }) => id === row.account)?.label ?? row.account;
    return [
      text(`${account}: ${labels.join(' / ')}`),
      row.base === null ? empty : linkCell(cells, row.base.perTonneId, name),
      row.with === null ? empty : linkCell(cells, row.with.perTonneId, name),
      linkCell(cells, row.perTonneId, name),
      linkCell(cells, row.perYearId, name),
    ];
  });
}

function valueOf(cells: ModelCells, id: string): number {
  return cells.open.values.has(id) ? cells.open.values.number(id) : NaN;
}

function orError(value: number): number | { readonly error: '#N/A' } {
  return Number.isFinite(value) ? value : { error: '#N/A' };
}
