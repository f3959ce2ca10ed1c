import type { InvestmentPlan } from '../../../src/index.ts';

/** How capital can be written off, and what can become of a loss, by the names the case knows. */
export const depreciationKinds = [
  { value: 'straight line', label: 'straight line' },
  { value: 'declining balance', label: 'declining balance' },
  { value: 'table', label: 'by a table' },
] as const;

export const lossRules = [
  { value: 'carried forward', label: 'carried forward' },
  { value: 'at once', label: 'tax back at once' },
] as const;

/** An answer that is none of those leaves the plan as it is. */
export function withDepreciation(plan: InvestmentPlan, answer: string): InvestmentPlan {
  const found = depreciationKinds.find(({ value }) => value === answer);
  return found === undefined ? plan : { ...plan, depreciation: found.value };
}

export function withLosses(plan: InvestmentPlan, answer: string): InvestmentPlan {
  const found = lossRules.find(({ value }) => value === answer);
  return found === undefined ? plan : { ...plan, losses: found.value };
}
