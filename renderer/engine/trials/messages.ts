import type { TrialSegment, TrialSummary } from '../../../src/index.ts';

/** What is drawn: a case by its text, and the result whose spread is asked for. */
export interface TrialOrder {
  readonly text: string;
  readonly result: string;
}

/** What a trial worker is asked. Every order carries a ticket, and its answers come back on that ticket. */
export type TrialAsked =
  /** How many trials the case wants. */
  | { readonly kind: 'count'; readonly ticket: number; readonly order: TrialOrder }
  | {
      readonly kind: 'run';
      readonly ticket: number;
      readonly order: TrialOrder;
      readonly first: number;
      readonly count: number;
    }
  | {
      readonly kind: 'sum up';
      readonly ticket: number;
      readonly order: TrialOrder;
      readonly segments: readonly TrialSegment[];
    }
  | { readonly kind: 'stop'; readonly ticket: number };

export type TrialAnswered =
  | { readonly kind: 'count'; readonly ticket: number; readonly trials: number }
  | { readonly kind: 'done so far'; readonly ticket: number; readonly trials: number }
  | { readonly kind: 'segment'; readonly ticket: number; readonly segment: TrialSegment }
  | { readonly kind: 'summary'; readonly ticket: number; readonly summary: TrialSummary }
  | { readonly kind: 'stopped'; readonly ticket: number }
  | { readonly kind: 'fault'; readonly ticket: number; readonly fault: string };
