import type { InputView, InvestmentPlan } from '../../../src/index.ts';
import { addingUp, shownLess } from '../../numbers/adding-up.ts';

/** What is spent, in millions as shown: by year in the order of the years asked for, then all of them together. */
export interface SpentSums {
  readonly items: readonly { readonly id: string; readonly label: string; readonly together: number }[];
  readonly contingency: readonly number[];
  readonly total: readonly number[];
}

const decimals = 2;
const million = 1e6;

/**
 * Adds up what is given; a year or an item without a figure is nothing. The years add up to the whole as shown, and contingency is what a
 * total shows beyond its items.
 */
export function spentSums(
  plan: InvestmentPlan,
  inputs: Readonly<Record<string, InputView>>,
  years: readonly number[],
): SpentSums {
  const given = (id: string, year: number): number =>
    Number(inputs[`investment.item.${id}.${String(year)}`]?.value ?? 0) / million;
  const withContingency = 1 + Number(inputs['investment.contingency']?.value ?? 0) / 100;
  const bare = years.map((year) => sum(plan.items.map(({ id }) => given(id, year))));
  const whole = rounded(sum(bare) * withContingency);
  const total = [
    ...addingUp(
      bare.map((money) => money * withContingency),
      whole,
      decimals,
    ),
    whole,
  ];
  const items = addingUp(bare, rounded(sum(bare)), decimals);
  return {
    items: plan.items.map(({ id, label }) => ({
      id,
      label,
      together: rounded(sum(years.map((year) => given(id, year)))),
    })),
    contingency: total.map((money, place) => shownLess(money, items[place] ?? rounded(sum(bare)), decimals)),
    total,
  };
}

function sum(values: readonly number[]): number {
  return values.reduce((all, value) => all + value, 0);
}

function rounded(value: number): number {
  return Math.round(Number((value * 100).toPrecision(12))) / 100;
}
