import { type Quantity, constant, total } from '../../kernel/expression/quantity.ts';
import { factor } from '../catalogue.ts';
import { plainFigure } from '../figure.ts';
import { type ByYear, eachYearOnce } from './by-year.ts';
import { type PlanSheet, planInput, yearInput } from './plan-sheet.ts';

/** What is spent once, in the money of the plan; nothing in most years. */
export interface Capital {
  /** Items with contingency, by year. */
  readonly spent: ByYear;
  /** Grants towards them, by year. */
  readonly granted: ByYear;
  readonly replaced: ByYear;
  /** Value at which the plant is given away at the end. */
  readonly disposal: Quantity;
  /** What is written off: items less grants, each in the money of its year, EUR. */
  readonly basis: Quantity;
}

export function capitalOf(sheet: PlanSheet): Capital {
  const { plan, years, inMoney } = sheet;
  const contingency = planInput(sheet, 'contingency', 'Contingency', '1', { entry: '%', high: '30' }).plus(
    constant('1'),
  );
  const onItems = contingency.times(estimateHit(sheet));
  const bare = years.map((year) => {
    const items = plan.items.flatMap(
      ({ id, label }) => yearInput(sheet, `item.${id}`, label, year, unitOf(sheet)) ?? [],
    );
    return items.length === 0 ? null : total(items, unitOf(sheet)).times(onItems);
  });
  const grants = years.map((year) => supportOf(sheet, 'grant', year));
  const replaced = years.map((year) => yearInput(sheet, 'replacement', 'Replacement', year, unitOf(sheet)));
  const byYear = (list: readonly (Quantity | null)[]): ByYear =>
    eachYearOnce((year) => {
      const money = list[year] ?? null;
      return money === null ? null : inMoney(money, year);
    });
  // Tax offices know the money of each year only: what is written off keeps its nominal sum for good.
  const nominal = (list: readonly (Quantity | null)[]): readonly Quantity[] =>
    list.flatMap((each, year) => (each === null ? [] : [sheet.nominal(inMoney(each, year), year)]));
  return {
    spent: byYear(bare),
    granted: byYear(grants),
    replaced: byYear(replaced),
    disposal: inMoney(planInput(sheet, 'disposal', 'Value at the end', unitOf(sheet)), plan.years),
    basis: sheet.sheet.define(
      'investment.basis',
      'Written off, in the money of each year',
      'EUR',
      total(nominal(bare), unitOf(sheet)).minus(total(nominal(grants), unitOf(sheet))),
      { where: sheet.where, note: 'Items with contingency less grants.' },
    ),
  };
}

/** What the items and their contingency come to over what they were estimated at; the class of the estimate says how far that may be out. */
function estimateHit({ sheet, plan, where }: PlanSheet): Quantity {
  const classed = plan.estimateClass === undefined ? undefined : factor(`estimate-class-${plan.estimateClass}`);
  return sheet.input({
    id: 'investment.estimate',
    label: 'What the capital comes to, of its estimate',
    where,
    unit: '1',
    figure: classed ?? plainFigure('100', '100', '100', '%', 'none', 'no class of the estimate is given'),
    allowed: { above: '0', most: '1000' },
  });
}

/** Grants or credits of one year. */
export function supportOf(sheet: PlanSheet, kind: 'grant' | 'credit', year: number): Quantity | null {
  const supports = (sheet.plan.supports ?? []).filter(
    (each) => each.kind === kind && each.first <= year && year <= each.last,
  );
  if (supports.length === 0) return null;
  return total(
    supports.map(({ id, label }) => planInput(sheet, `support.${id}`, label, unitOf(sheet))),
    unitOf(sheet),
  );
}

export const unitOf = ({ sheet }: PlanSheet): string => sheet.case.currency;
