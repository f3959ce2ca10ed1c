import type { InvestmentPlan } from '../../case/investment-plan.ts';
import { type PlanRow, planRowId, planRows } from '../../paper/investment/investment.ts';
import { type PriceGroup, priceGroups } from '../../paper/investment/price-group.ts';
import { type BreakEven, breakEven } from '../break-even.ts';
import { type InternalRates, internalRates } from '../finance/internal-rates.ts';
import { levelisedCost } from '../finance/levelised-cost.ts';
import { modifiedRate } from '../finance/modified-rate.ts';
import { payback } from '../finance/payback.ts';
import { profitabilityIndex } from '../finance/profitability-index.ts';
import { realRate } from '../finance/real-rate.ts';
import type { OpenCase } from '../open-case.ts';
import { ResultTape } from '../result-tape.ts';
import { type EstimateRange, estimateRange } from './estimate-range.ts';
import { type SameProductStand, sameProduct } from '../trust/same-product.ts';
import { npvId } from './npv-id.ts';
import { type PlanResidues, planResidues } from './plan-residues.ts';
import { typedSavings } from './typed-savings.ts';

/** One row of the plan: a figure a year, and the quantity behind each; null where the row has none in that year. */
export interface PlanRowFigures {
  readonly id: PlanRow;
  readonly label: string;
  readonly ids: readonly (string | null)[];
  readonly values: readonly number[];
}

/** What an investment plan comes to. Money in the currency of the case, in the terms of the plan; rates as fractions; before financing. */
export interface PlanResults {
  readonly plan: InvestmentPlan;
  readonly priceYear: string;
  readonly base: { readonly id: string; readonly label: string };
  readonly project: { readonly id: string; readonly label: string };
  /** Whether the two make the same product, as far as anybody has said. */
  readonly sameProduct: SameProductStand;
  /** Calendar years of year 0 and on. */
  readonly calendar: readonly string[];
  readonly rows: readonly PlanRowFigures[];
  /** Groups of prices that the saving rests on: only these can be given a growth or a value for a year. */
  readonly groups: readonly { readonly id: PriceGroup; readonly label: string }[];
  /** How far the capital may be out, in per cent of its estimate; null where nobody said of which class it is, nor gave a range. */
  readonly estimate: EstimateRange | null;
  /** Calendar years whose saving somebody typed: in place of the computed one, or beside it. */
  readonly typedSavings: { readonly instead: readonly string[]; readonly beside: readonly string[] };
  /** Where residues may go in which years, and the shares that somebody gave. */
  readonly residues: PlanResidues;
  readonly flows: readonly number[];
  readonly cumulative: readonly number[];
  /** Present values summed up to each year. */
  readonly discounted: readonly number[];
  readonly rates: {
    readonly nominal: number;
    readonly inflation: number;
    readonly real: number;
    readonly used: number;
  };
  /** Capital items with contingency, all years. */
  readonly outlay: number;
  /** In money of the price year. */
  readonly npv: number;
  /** Null where a flow cannot be worked out. */
  readonly internal: InternalRates | null;
  /** Outlays financed, and returns invested again, at the rate of the plan; null where there are none of one of them. */
  readonly modified: number | null;
  /** Years from the first money; null where it is never paid back. */
  readonly payback: number | null;
  readonly discountedPayback: number | null;
  /** Null where nothing is spent. */
  readonly index: number | null;
  /** Per tonne of product made from the first year of operation on, before tax: all but the saving, and the saving. */
  readonly levelised: { readonly cost: number; readonly saving: number };
  /** Annual tonnes, and prices of fibre, at which the present value is nothing. */
  readonly breakEvens: { readonly tonnes: BreakEven | null; readonly fibre: readonly BreakEven[] };
}

/** The results of the plan of a case; null where it has none. */
export function planResults(open: OpenCase): PlanResults | null {
  const { content, values } = open;
  const plan = content.investment;
  if (plan === undefined) return null;
  const years = Array.from({ length: plan.years + 1 }, (_, year) => year);
  const figures = (id: PlanRow): readonly number[] => years.map((year) => numberOf(open, planRowId(id, year)));
  const flows = figures('flow');
  const rates = ratesOf(open, plan);
  const spent = figures('capital').map((value) => -value);
  const tax = figures('tax');
  const parts = (['saving', 'further', 'outlets'] as const).map(figures);
  const saving = years.map((year) => parts.reduce((sum, part) => sum + (part[year] ?? 0), 0));
  const tonnes = years.map((year) => (year < plan.operatesFrom ? 0 : values.number('product.tonnes')));
  const levelised = (money: readonly number[]): number => levelisedCost(money, tonnes, rates.used) ?? NaN;
  return {
    plan,
    priceYear: content.priceYear,
    base: routeOf(open, plan.from),
    project: routeOf(open, plan.to),
    sameProduct: sameProduct(open, { base: plan.from, with: plan.to }),
    calendar: years.map((year) => String(Number(plan.start) + year)),
    rows: planRows.map(({ id, label }) => ({
      id,
      label,
      ids: years.map((year) => (values.has(planRowId(id, year)) ? planRowId(id, year) : null)),
      values: figures(id),
    })),
    groups: priceGroups.filter(
      ({ id }) => values.has(`investment.saved.${id}`) || values.has(`investment.savedStanding.${id}`),
    ),
    estimate: estimateRange(open, plan),
    typedSavings: typedSavings(open, plan),
    residues: planResidues(open, plan),
    flows,
    cumulative: figures('cumulative'),
    discounted: summedUp(figures('present')),
    rates,
    outlay: spent.reduce((sum, value) => sum + value, 0),
    npv: values.number(npvId),
    internal: flows.every(Number.isFinite) ? internalRates(flows) : null,
    modified: modifiedRate(flows, rates.used, rates.used),
    payback: payback(flows),
    discountedPayback: payback(flows, rates.used),
    index: profitabilityIndex(flows, spent, rates.used),
    levelised: {
      cost: levelised(flows.map((flow, year) => (saving[year] ?? 0) + (tax[year] ?? 0) - flow)),
      saving: levelised(saving),
    },
    breakEvens: breakEvensOf(open),
  };
}

/** A row that has nothing in a year counts as nothing. */
function numberOf({ values }: OpenCase, id: string): number {
  return values.has(id) ? values.number(id) : 0;
}

function ratesOf({ values }: OpenCase, plan: InvestmentPlan): PlanResults['rates'] {
  const [nominal, inflation] = [values.number('capital.rate'), values.number('capital.inflation')];
  const real = realRate(nominal, inflation);
  return { nominal, inflation, real, used: plan.money === 'real' ? real : nominal };
}

function routeOf({ content }: OpenCase, id: string): { readonly id: string; readonly label: string } {
  return { id, label: content.routes.find((route) => route.id === id)?.label ?? id };
}

function summedUp(values: readonly number[]): readonly number[] {
  let sum = 0;
  return values.map((value) => (sum += value));
}

function breakEvensOf(open: OpenCase): PlanResults['breakEvens'] {
  const tape = new ResultTape(open, npvId);
  // A price that goes by tiers is worked out, and turns nothing by itself.
  const inputs = new Set(open.model.graph.inputs.map(({ id }) => id));
  const prices = open.content.materials.map(({ id }) => `material.${id}.price`).filter((id) => inputs.has(id));
  return {
    tonnes: breakEven(open, npvId, 'product.tonnes', 0, tape),
    fibre: prices.flatMap((id) => breakEven(open, npvId, id, 0, tape) ?? []),
  };
}
