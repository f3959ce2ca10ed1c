import { npvId, type InvestmentPlan, type Spread } from '../../../../src/index.ts';

/**
 * In what money a present value is told and what it leaves out: "real, prices of 2024, before financing"; "" for any other result. `text`
 * is that of the case, which holds the plan.
 */
export function planTerms(result: string, text: string, { priceYear }: Pick<Spread, 'priceYear'>): string {
  if (result !== npvId) return '';
  const { investment } = JSON.parse(text) as { readonly investment?: Pick<InvestmentPlan, 'money'> };
  // An answer about a plan stays on the page for a moment after the plan was given up.
  if (investment === undefined) return 'before financing';
  const money = investment.money === 'real' ? 'real, prices' : 'nominal, from prices';
  return `${money} of ${priceYear}, before financing`;
}
