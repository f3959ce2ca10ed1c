import { marginalPowerIds } from '../paper/marginal-power.ts';
import type { OpenCase } from './open-case.ts';

/** The difference a second time, its electricity at the marginal price in place of the average. Money per tonne and per year. */
export interface MarginalPower {
  /** kWh/t that the second route buys more than the first. */
  readonly use: number;
  /** Money per kWh. */
  readonly price: number;
  readonly average: number;
  /** What the marginal price adds to the difference, per tonne. */
  readonly more: number;
  readonly moreId: string;
  readonly perTonne: number;
  readonly perTonneId: string;
  readonly perYear: number;
  readonly perYearId: string;
}

/** Null where the case has no marginal price: then the average holds for the difference as well. */
export function marginalPower({ values }: OpenCase): MarginalPower | null {
  const { price, use, more, total, totalPerYear } = marginalPowerIds;
  if (!values.has(total)) return null;
  return {
    use: values.number(use),
    price: values.number(price),
    average: values.number('price.electricity'),
    more: values.number(more),
    moreId: more,
    perTonne: values.number(total),
    perTonneId: total,
    perYear: values.number(totalPerYear),
    perYearId: totalPerYear,
  };
}
