import type { Case } from '../case.ts';
import type { InvestmentPlan } from '../investment-plan.ts';

export function setInvestment(content: Case, plan: InvestmentPlan | null): Case {
  const { investment: _before, ...rest } = content;
  return plan === null ? rest : { ...rest, investment: plan };
}
