import type { Quantity } from '../../kernel/expression/quantity.ts';
import { constant } from '../../kernel/expression/quantity.ts';
import { type ByYear, eachYearOnce } from './by-year.ts';
import { type PlanSheet, yearInput } from './plan-sheet.ts';
import type { Running } from './running.ts';

/**
 * What tonnes that the mill makes more (or, below nothing, less) with the new line bring in each year, in the money of the plan; null
 * without any. Tonnes of every year count while the line runs; those given for one year stand as they are. Whoever gives either tonnes
 * or a margin is asked for the other: no margin is taken for granted.
 */
export function moreTonnes(sheet: PlanSheet, { on }: Running): ByYear {
  const { sheet: model, plan, where } = sheet;
  const operation = sheet.years.filter((year) => year >= plan.operatesFrom);
  const money = model.case.currency;
  const spec = (id: string, label: string, unit: string) => ({
    id: `investment.${id}`,
    label,
    where,
    unit,
    allowed: {},
  });
  const tonnes = spec('moreTonnes', 'Tonnes gained a year, lost ones below nothing', 't/a');
  const margin = spec('margin', 'Margin on a tonne gained or lost', 'EUR/t');
  const isOfYear = (id: string): boolean => operation.some((year) => model.isGiven(`investment.${id}.${String(year)}`));
  const isTold = [tonnes, margin].some((each) => model.has(each)) || ['moreTonnes', 'margin'].some(isOfYear);
  if (!isTold) return () => null;
  const whole = model.has(tonnes) || !isOfYear('moreTonnes') ? model.input(tonnes) : null;
  return eachYearOnce((year): Quantity | null => {
    if (year < plan.operatesFrom) return null;
    const ofYear = yearInput(sheet, 'moreTonnes', 'Tonnes gained', year, 't/a', { allowed: {} });
    const worth = yearInput(sheet, 'margin', 'Margin on a tonne gained', year, `${money}/t`, { allowed: {} });
    const made = ofYear ?? whole?.times(on(year)) ?? null;
    if (made === null) return null;
    return sheet.inMoney(made.times(worth ?? model.input(margin)).times(constant('1', 'a')), year);
  });
}
