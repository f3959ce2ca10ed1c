import type { InvestmentPlan } from '../../case/investment-plan.ts';
import { inputRange } from '../input-range.ts';
import type { OpenCase } from '../open-case.ts';

/** What the capital may come to, in per cent of its estimate: by the class of the estimate, or by a range of somebody's own. */
export interface EstimateRange {
  readonly class: InvestmentPlan['estimateClass'] | null;
  readonly low: number;
  readonly high: number;
  readonly isOwn: boolean;
}

/** The input that says what the capital comes to over its estimate. */
export const estimateId = 'investment.estimate';

export function estimateRange({ model }: OpenCase, { estimateClass }: InvestmentPlan): EstimateRange | null {
  const input = model.graph.inputs.find(({ id }) => id === estimateId);
  const range = input === undefined ? null : inputRange(input, 'usual range');
  if (input === undefined || range?.isKnown !== true || range.convention) return null;
  return { class: estimateClass ?? null, low: range.low, high: range.high, isOwn: input.judged !== null };
}
