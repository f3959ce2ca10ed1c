import { type Quantity, constant } from '../../kernel/expression/quantity.ts';
import { type PlanSheet, yearInput } from './plan-sheet.ts';

/**
 * Tax of each year on profits in the money of the plan; null in years before there are any. Losses earn their tax back at once, from other profits of the company, or are
 * carried forward without end: then they keep the sum they had, and lose value as money does.
 */
export function taxes(
  sheet: PlanSheet,
  profits: readonly (Quantity | null)[],
  rate: Quantity,
): readonly (Quantity | null)[] {
  const { plan } = sheet;
  const nothing = constant('0', sheet.sheet.case.currency);
  let losses: Quantity | null = null;
  return profits.map((profit, year) => {
    const rateOf = yearInput(sheet, 'taxRate', 'Tax on profit', year, '1', { entry: '%' }) ?? rate;
    if (profit === null) return null;
    if (plan.losses === 'at once') return profit.times(rateOf);
    const carried: Quantity | null = losses === null ? null : sheet.yearOlder(losses);
    const left: Quantity = carried === null ? profit : profit.minus(carried);
    losses = nothing.minus(left).greaterOf(nothing);
    return left.greaterOf(nothing).times(rateOf);
  });
}
