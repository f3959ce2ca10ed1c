import type { InputView, InvestmentPlan } from '../../../src/index.ts';

const fewest = 2;

/** Years in which money can be put on an item: those of building and the first of operation, two at least, and any later one that has a figure. */
export function buildingYears(plan: InvestmentPlan, inputs: Readonly<Record<string, InputView>>): readonly number[] {
  const given = plan.items.flatMap(({ id }) => yearsGiven(inputs, `investment.item.${id}`));
  const last = Math.max(plan.operatesFrom, fewest - 1, ...given);
  return Array.from({ length: Math.min(last, plan.years) + 1 }, (_, year) => year);
}

/** Years for which an input of a year is given: "investment.replacement.10" is year 10 of "investment.replacement". */
export function yearsGiven(inputs: Readonly<Record<string, InputView>>, stem: string): readonly number[] {
  const start = `${stem}.`;
  return Object.keys(inputs)
    .filter((id) => id.startsWith(start) && /^\d+$/u.test(id.slice(start.length)))
    .map((id) => Number(id.slice(start.length)))
    .sort((one, other) => one - other);
}
