import { readFileSync } from 'node:fs';
import type { InvestmentPlan } from '../../../src/case/investment-plan.ts';
import { type OpenCase, openCase } from '../../../src/study/open-case.ts';

const story = JSON.parse(readFileSync(new URL('../../../examples/stories/s8.tonne', import.meta.url), 'utf8')) as {
  readonly investment: InvestmentPlan;
  readonly inputs: Readonly<Record<string, unknown>>;
};

export interface GraphPlan {
  readonly years: number;
  /** Spent in year 0. */
  readonly outlay: number;
  /** Saved in each year from 1 on, typed in place of what the statements save: a figure, or the same every year. */
  readonly saving: number;
  /** Per cent; there is no inflation unless it is said, so that real and nominal are one. */
  readonly rate: number;
  readonly inflation?: number;
  readonly plan?: Partial<InvestmentPlan>;
  /** Further inputs of the plan, in per cent where nothing else is said. */
  readonly more?: Readonly<Record<string, { readonly value: string; readonly unit: string }>>;
}

/** A published example as an investment plan of the program: the whole of it runs through the graph, as a plan of a mill does. */
export function planInGraph({ years, outlay, saving, rate, inflation = 0, plan = {}, more = {} }: GraphPlan): OpenCase {
  const given = (value: number, unit: string) => ({ value: String(value), unit });
  const savings = Array.from(
    { length: years },
    (_, place) => [`investment.savingInstead.${String(place + 1)}`, given(saving, 'EUR')] as const,
  );
  const read = openCase(
    JSON.stringify({
      ...story,
      investment: { ...story.investment, years, ...plan },
      inputs: {
        ...story.inputs,
        'capital.rate': given(rate, '%'),
        'capital.inflation': given(inflation, '%'),
        'investment.item.plant.0': given(outlay, 'EUR'),
        ...Object.fromEntries(savings),
        ...more,
      },
    }),
  );
  if (!read.ok) throw new Error(JSON.stringify(read.problems));
  return read.value;
}

export const worthOf = ({ values }: OpenCase): number => values.number('investment.npv');

/** What is written off in years 1 to so many. */
export function writtenOff({ values }: OpenCase, years: number): readonly number[] {
  return Array.from({ length: years }, (_, place) => values.number(`investment.writeOff.${String(place + 1)}`));
}
