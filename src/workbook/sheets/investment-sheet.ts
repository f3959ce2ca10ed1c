import { type PlanResults, planResults } from '../../study/investment/plan-results.ts';
import { npvId } from '../../study/investment/npv-id.ts';
import { unitLabel } from '../../wording/unit-label.ts';
import { cellAddress } from '../addresses.ts';
import { empty, formula, heads, note, number, strong, text, told } from '../cells.ts';
import type { Verdict } from '../checks/verdict.ts';
import { firstRow, firstYearColumn } from '../model/geometry.ts';
import type { ModelCells } from '../model/model-cells.ts';
import { summedRows } from '../model/year-sum.ts';
import type { YearRow } from '../model/year-rows.ts';
import { numberForm } from '../number-form.ts';
import type { Cell, SheetPlan } from '../plan.ts';
import { framed } from './framed.ts';
import { linkCell } from './link-cell.ts';

/** The investment plan, years across; null where the case has none. */
export function investmentSheet(cells: ModelCells, verdict: Verdict): SheetPlan | null {
  const { years } = cells.layout;
  const results = planResults(cells.open);
  if (years === null || results === null) return null;
  const { name, rows, steps } = years;
  const { currency } = cells.open.content;
  return framed({
    name,
    title: `Investment plan: from ${results.base.label} to ${results.project.label}`,
    says: `Years across, before financing, ${results.plan.money === 'real' ? `in money of ${results.priceYear}` : 'in the money of each year'}. What comes in is positive, what goes out negative.`,
    verdict,
    heads: [...heads('Row', 'Unit'), ...heads(...results.calendar)],
    widths: [46, 14, ...results.calendar.map(() => 16)],
    rows: [
      ...rows.map((row) => yearCells(cells, row)),
      [],
      [strong('Steps towards these rows')],
      ...steps.map(({ owner, nodes }) => stepCells(cells, owner, nodes)),
      [],
      [strong('What it comes to')],
      [text('Net present value, follows the inputs'), text(currency), linkCell(cells, npvId, name, 'strong')],
      [note('Results of the program at the moment of writing, which do not follow the inputs:')],
      ...measureRows(results, currency),
    ],
    frozenColumns: 2,
  });
}

function yearCells(cells: ModelCells, row: YearRow): readonly Cell[] {
  const { graph } = cells.open.model;
  const rows = cells.layout.years?.rows ?? [];
  const summed = summedRows(graph, row, rows);
  const sheet = cells.layout.years?.name ?? '';
  const cellOf = (index: number | undefined, year: number): Cell => {
    // A row that has nothing in a year counts as nothing, so that sums over rows read alike in all years.
    if (index === undefined) return number(0, 'whole money', 'note');
    const column = firstYearColumn + year;
    const words =
      summed === null
        ? cells.formula(index, sheet)
        : summed.map((each) => cellAddress(firstRow + rows.indexOf(each), column)).join('+');
    return formula(words, cells.result(index), 'whole money');
  };
  return [text(row.label), text(unitLabel(row.unit)), ...row.nodes.map(cellOf)];
}

function stepCells(cells: ModelCells, owner: number, nodes: readonly (number | undefined)[]): readonly Cell[] {
  const sheet = cells.layout.years?.name ?? '';
  const label = (cells.node(owner).declaration?.label ?? '').replace(/, \d{4}$/u, '');
  const first = nodes.find((index) => index !== undefined);
  return [
    text(`   step towards: ${label}`),
    text(first === undefined ? '' : unitLabel(cells.node(first).unit.text)),
    ...nodes.map((index): Cell => {
      if (index === undefined) return empty;
      const form = numberForm(cells.node(index).unit, undefined, cells.open.content.currency);
      return formula(cells.formula(index, sheet), cells.result(index), form);
    }),
  ];
}

/** Returns that a spreadsheet would search for from a guess, and that can be none or several. */
function measureRows(results: PlanResults, currency: string): readonly (readonly Cell[])[] {
  const { internal, modified, payback, discountedPayback, index, levelised, rates, outlay } = results;
  const orNone = (value: number | null, cell: (value: number) => Cell): Cell =>
    value === null ? note('none') : cell(value);
  const found = internal?.rates.filter(({ isMeaningless }) => !isMeaningless) ?? [];
  return [
    [text('Rate that the plan asks'), text(''), told(rates.used, 'share')],
    [
      text('Internal rates of return'),
      text(''),
      ...(found.length === 0 ? [note('none')] : found.map(({ rate }) => told(rate, 'share'))),
    ],
    [text('Modified internal rate'), text(''), orNone(modified, (value) => told(value, 'share'))],
    [text('Paid back after, from the first money'), text('years'), orNone(payback, (value) => told(value, 'quantity'))],
    [
      text('Paid back with interest after'),
      text('years'),
      orNone(discountedPayback, (value) => told(value, 'quantity')),
    ],
    [text('Profitability index'), text(''), orNone(index, (value) => told(value, 'quantity'))],
    [text('Capital with contingency'), text(currency), told(outlay, 'whole money')],
    [text('Carried by a tonne, levelised, before tax'), text(`${currency}/t`), told(levelised.cost, 'money')],
    [text('Saved by a tonne, levelised'), text(`${currency}/t`), told(levelised.saving, 'money')],
  ];
}
