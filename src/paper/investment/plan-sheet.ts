import type { InvestmentPlan } from '../../case/investment-plan.ts';
import type { Bounds } from '../../kernel/expression/operation.ts';
import { type Quantity, constant, isConstant } from '../../kernel/expression/quantity.ts';
import { plainFigure } from '../figure.ts';
import type { Mill } from '../plant.ts';
import type { RouteModel } from '../route.ts';
import { type Sheet, fraction, notNegative } from '../sheet.ts';

/** What every part of an investment plan is written with. Money is of the price year until `inMoney` puts it into the terms of the plan. */
export interface PlanSheet {
  readonly sheet: Sheet;
  readonly plan: InvestmentPlan;
  readonly mill: Mill;
  readonly base: RouteModel;
  readonly project: RouteModel;
  /** 0 to the last year. */
  readonly years: readonly number[];
  readonly where: string;
  /** Money of the price year as the plan tells money of a year: risen with general inflation in nominal terms, as it is in real ones. */
  readonly inMoney: (money: Quantity, year: number) => Quantity;
  /** Money of the plan in the money of its year: what a tax office sees. */
  readonly nominal: (money: Quantity, year: number) => Quantity;
  /** A sum fixed in the money of its year, as the plan tells money. */
  readonly fromNominal: (money: Quantity, year: number) => Quantity;
  /** A sum fixed in the money of the year before, as the plan tells money a year later. */
  readonly yearOlder: (money: Quantity) => Quantity;
  /** Present value of money of a year, in money of the price year. */
  readonly discounted: (money: Quantity, year: number) => Quantity;
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
  const inflation = one.plus(rates.inflation);
  // Prices are those of the price year, so that a plan that begins later begins with prices that have risen since.
  const before = constant(String(Number(plan.start) - Number(sheet.case.priceYear)));
  const sincePriceYear = isConstant(before, '0') ? one : inflation.toThePower(before);
  const inflated = powers(sincePriceYear, inflation, years);
  // A present value is told in money of the price year in either kind of money, so that both are the same figure.
  const divisor = isReal
    ? powers(one, one.plus(rates.real), years)
    : powers(sincePriceYear, one.plus(rates.nominal), years);
  // Nothing is multiplied or divided by 1, since every step is worked out at every keystroke.
  const risen = (money: Quantity, year: number): Quantity => money.times(inflated[year] ?? one);
  const fallen = (money: Quantity, year: number): Quantity => money.dividedBy(inflated[year] ?? one);
  const same = (money: Quantity): Quantity => money;
  return {
    sheet,
    plan,
    mill,
    base,
    project,
    years,
    where: 'Investment plan',
    inMoney: isReal ? same : risen,
    nominal: isReal ? risen : same,
    fromNominal: isReal ? fallen : same,
    yearOlder: isReal ? (money) => money.dividedBy(inflation) : same,
    discounted: (money, year) => money.dividedBy(divisor[year] ?? one),
  };
}

/** first, first x base, first x base^2, ... one product each. */
function powers(first: Quantity, base: Quantity, years: readonly number[]): readonly Quantity[] {
  const made: Quantity[] = [first];
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
    readonly above?: string;
  } = {},
): Quantity {
  const { value = '0', low = value, high = value, entry, most, above } = more;
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
      low === high ? 'none' : 'practice',
      value === '0' ? 'none entered' : undefined,
    ),
    allowed:
      entry === '%' && most === undefined
        ? fraction
        : { ...(above === undefined ? notNegative : { above }), ...(most === undefined ? {} : { most }) },
  });
}

/** An input of one year that is there only where somebody gives it; null where nobody did. */
export function yearInput(
  { sheet, plan, where }: PlanSheet,
  id: string,
  label: string,
  year: number,
  unit: string,
  { entry, allowed = notNegative }: { readonly entry?: string; readonly allowed?: Bounds } = {},
): Quantity | null {
  const spec = {
    id: `investment.${id}.${String(year)}`,
    label: `${label}, ${String(Number(plan.start) + year)}`,
    where,
    unit,
    ...(entry === undefined ? {} : { entry }),
    allowed,
  };
  return sheet.has(spec) ? sheet.input(spec) : null;
}
