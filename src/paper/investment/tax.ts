import { type Quantity, constant } from '../../kernel/expression/quantity.ts';
import { type PlanSheet, yearInput } from './plan-sheet.ts';

/**
 * Tax of each year on profits in the money of the plan. Losses earn their tax back at once, from other profits of the company, or are
 * carried forward without end: then they keep the sum they had, and lose value as money does.
 */
export function taxes(sheet: PlanSheet, profits: readonly Quantity[], rate: Quantity): readonly Quantity[] {
  const { plan } = sheet;
  const nothing = constant('0', sheet.sheet.case.currency);
  let losses: Quantity | null = null;
  return profits.map((profit, year) => {
    const rateOf = yearInput(sheet, 'taxRate', 'Tax on profit', year, '1', '%') ?? rate;
    if (plan.losses === 'at once') return profit.times(rateOf);
    const carried: Quantity | null =
      losses === null ? null : losses.times(sheet.deflated(year)).dividedBy(sheet.deflated(year - 1));
    const left: Quantity = carried === null ? profit : profit.minus(carried);
    losses = nothing.minus(left).greaterOf(nothing);
    return left.greaterOf(nothing).times(rateOf);
  });
}
