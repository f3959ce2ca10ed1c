import { type Distribution, deviationOf, meanOf } from '../../kernel/random/distribution.ts';
import type { DrawnInput } from './drawn-input.ts';

/** How an input was drawn, to stand beside what came of it; figures in its entry unit. */
export interface DrawnSummary {
  readonly id: string;
  readonly label: string;
  readonly where: string;
  readonly unit: string;
  readonly distribution: Distribution;
  readonly mean: number;
  readonly deviation: number;
  readonly drawn: 'once' | 'yearly';
  readonly persistence: number;
  /** Whether it moves any of the results at all. */
  readonly reaches: boolean;
}

export function drawnSummary({ input, distribution, drawn, persistence }: DrawnInput, reaches: boolean): DrawnSummary {
  return {
    id: input.id,
    label: input.label,
    where: input.where ?? '',
    unit: input.entryUnit,
    distribution,
    mean: meanOf(distribution),
    deviation: deviationOf(distribution),
    drawn,
    persistence,
    reaches,
  };
}
