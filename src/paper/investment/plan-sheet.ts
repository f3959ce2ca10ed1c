import type { InvestmentPlan } from '../../case/investment-plan.ts';
import { type Quantity, constant } from '../../kernel/expression/quantity.ts';
import { plainFigure } from '../figure.ts';
import type { Mill } from '../plant.ts';
import type { RouteModel } from '../route.ts';
import { type Sheet, fraction, notNegative } from '../sheet.ts';

/** What every part of an investment plan is written with. Money is of the price year until it is multiplied by `money(year)`. */
export interface PlanSheet {
  readonly sheet: Sheet;
  readonly plan: InvestmentPlan;
  readonly mill: Mill;
  readonly base: RouteModel;
  readonly project: RouteModel;
  /** 0 to the last year. */
  readonly years: readonly number[];
  readonly where: string;
  /** What general inflation has made of money by a year, as the plan tells money: 1 in real terms. */
  readonly money: (year: number) => Quantity;
  /** What money of a year is worth in the terms of the plan, for sums fixed in the money of each year: 1 in nominal terms. */
  readonly deflated: (year: number) => Quantity;
  /** Present value of money of a year. */
  readonly discount: (year: number) => Quantity;
}

const one = constant('1');

export function planSheet(
  sheet: Sheet,
  plan: InvestmentPlan,
  mill: Mill,
  base: RouteModel,
  project: RouteModel,
  rates: { readonly nominal: Quantity; readonly real: Quantity; readonly inflation: Quantity },
): PlanSheet {
  const isReal = plan.money === 'real';
  const years = Array.from({ length: plan.years + 1 }, (_, year) => year);
  const inflated = powers(one.plus(rates.inflation), years);
  const divisor = powers(one.plus(isReal ? rates.real : rates.nominal), years);
  const at = (list: readonly Quantity[], year: number): Quantity => list[year] ?? one;
  return {
    sheet,
    plan,
    mill,
    base,
    project,
    years,
    where: 'Investment plan',
    money: (year) => (isReal ? one : at(inflated, year)),
    deflated: (year) => (isReal ? one.dividedBy(at(inflated, year)) : one),
    discount: (year) => one.dividedBy(at(divisor, year)),
  };
}

/** base^0, base^1, ... one product each. */
function powers(base: Quantity, years: readonly number[]): readonly Quantity[] {
  const made: Quantity[] = [one];
  for (const year of years.slice(1)) made.push((made[year - 1] ?? one).times(base));
  return made;
}

/** An input of the plan that is nothing until somebody gives it. */
export function planInput(
  { sheet, where }: PlanSheet,
  id: string,
  label: string,
  unit: string,
  more: {
    readonly value?: string;
    readonly low?: string;
    readonly high?: string;
    readonly entry?: string;
    readonly most?: string;
  } = {},
): Quantity {
  const { value = '0', low = value, high = value, entry, most } = more;
  return sheet.input({
    id: `investment.${id}`,
    label,
    where,
    unit,
    ...(entry === undefined ? {} : { entry }),
    figure: plainFigure(
      value,
      low,
      high,
      entry ?? unit,
      value === '0' ? 'none' : 'practice',
      value === '0' ? 'none entered' : undefined,
    ),
    allowed:
      entry === '%' && most === undefined ? fraction : { ...notNegative, ...(most === undefined ? {} : { most }) },
  });
}

/** An input of one year that is there only where somebody gives it; null where nobody did. */
export function yearInput(
  { sheet, plan, where }: PlanSheet,
  id: string,
  label: string,
  year: number,
  unit: string,
  entry?: string,
): Quantity | null {
  const spec = {
    id: `investment.${id}.${String(year)}`,
    label: `${label}, ${String(Number(plan.start) + year)}`,
    where,
    unit,
    ...(entry === undefined ? {} : { entry }),
    allowed: notNegative,
  };
  return sheet.has(spec) ? sheet.input(spec) : null;
}
