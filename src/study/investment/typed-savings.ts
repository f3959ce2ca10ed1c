import type { InvestmentPlan } from '../../case/investment-plan.ts';
import type { OpenCase } from '../open-case.ts';

/** Calendar years whose saving somebody typed, in place of the computed one or beside it. */
export function typedSavings(
  { content }: OpenCase,
  plan: InvestmentPlan,
): { readonly instead: readonly string[]; readonly beside: readonly string[] } {
  const given = (stem: string): readonly string[] =>
    Array.from({ length: plan.years + 1 }, (_, year) => year)
      .filter((year) => Object.hasOwn(content.inputs, `${stem}.${String(year)}`))
      .map((year) => String(Number(plan.start) + year));
  return { instead: given('investment.savingInstead'), beside: given('investment.savingBeside') };
}
