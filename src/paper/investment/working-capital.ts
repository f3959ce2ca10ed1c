import { type Quantity, constant, total } from '../../kernel/expression/quantity.ts';
import { type ByYear, eachYearOnce, sumOf } from './by-year.ts';
import { type PlanSheet, planInput } from './plan-sheet.ts';
import type { Running } from './running.ts';
import { unitOf } from './capital.ts';
import { hasOwnStockDays, tiedUpIdOf, tiesUp } from '../money-tied-up.ts';

/**
 * Money tied up in stocks, more by the project than by the base route: days of pulp and of bales at what they cost ex works, and what else
 * somebody enters. Flows of each year in the money of the plan. Stocks change when the line begins to run, so that a late start moves them;
 * other working capital is laid out when it was planned to be. The stock keeps its tonnes, so that in the money of each year it comes back
 * dearer than it went.
 */
export function workingCapital(sheet: PlanSheet, { begun }: Running): ByYear {
  const { plan, years } = sheet;
  const days = (id: string, label: string): Quantity =>
    planInput(sheet, `stock.${id}`, label, '1', { high: '60', most: '365' }).dividedBy(constant('365'));
  const year = constant('1', 'a');
  const pulp = more(sheet, true).times(days('pulp', 'Pulp in stock, days of use')).times(year);
  const bales = more(sheet, false).times(days('bales', 'Bales in stock, days of use')).times(year);
  const other = planInput(sheet, 'workingCapital', 'Other working capital', unitOf(sheet));
  const stocks = sheet.sheet.define(
    'investment.stocks',
    'Stocks of fibre',
    'EUR',
    total([pulp, bales, ...ofMaterials(sheet)], unitOf(sheet)),
    {
      where: sheet.where,
      note: 'Days of use of each kind of fibre, project less base.',
    },
  );
  sheet.sheet.define('investment.tiedUp', 'Working capital', 'EUR', stocks.plus(other), {
    where: sheet.where,
    note: 'Stocks of fibre and other working capital, in money of the price year.',
  });
  const first = Math.max(0, plan.operatesFrom - 1);
  // Stocks are filled before the line runs, as long before as the other money is laid out.
  const filled = (at: number): Quantity | null => {
    const share = at < first ? null : begun(at - first + plan.operatesFrom);
    return share === null ? null : stocks.times(share);
  };
  const nothing = constant('0', unitOf(sheet));
  const out = (at: number): Quantity | null => sumOf([filled(at), at === first ? other : null]);
  const ever = total(
    years.flatMap((at) => filled(at) ?? []),
    unitOf(sheet),
  );
  return eachYearOnce((at) => {
    const laid = out(at);
    // What a start that is later than the plan never ties up does not come back either.
    const back = at === plan.years ? sumOf([ever, other]) : null;
    return sumOf([
      laid === null ? null : nothing.minus(sheet.inMoney(laid, at)),
      back === null ? null : sheet.inMoney(back, at),
    ]);
  });
}

/** What fibre of a kind costs a year, project less base. */
function more({ sheet, base, project }: PlanSheet, isVirgin: boolean): Quantity {
  const unit = `${sheet.case.currency}/a`;
  const virgin = new Set(sheet.case.materials.filter(({ origin }) => origin === 'virgin').map(({ id }) => id));
  const of = ({ statement }: PlanSheet['base']): Quantity =>
    total(
      statement.lines
        .filter(({ account, key }) => account === 'fibre' && virgin.has(key) === isVirgin)
        // A material with days of its own stands in the stock of its route already.
        .filter(({ key }) => !hasOwnStockDays(sheet, key))
        .map(({ perYearId }) => sheet.graph.later(perYearId, unit)),
      unit,
    );
  return of(project).minus(of(base));
}

/** What materials with days of their own tie up, less what is owed to their suppliers, project less base. */
function ofMaterials({ sheet, base, project }: PlanSheet): readonly Quantity[] {
  const unit = sheet.case.currency;
  const of = ({ plant: { route } }: PlanSheet['base'], kind: 'stock' | 'owed'): Quantity =>
    tiesUp(sheet, route, kind) ? sheet.graph.later(tiedUpIdOf(route.id, kind), unit) : constant('0', unit);
  const held = (route: PlanSheet['base']): Quantity => of(route, 'stock').minus(of(route, 'owed'));
  return [held(project).minus(held(base))];
}
