import type { LeastCostBlend } from '../../../src/index.ts';

/** The cheapest blend of the lots of a case, by its text, on a day. The ticket comes back on the answer. */
export interface BlendAsked {
  readonly ticket: number;
  readonly text: string;
  readonly today: string;
}

export type BlendAnswered =
  | { readonly ticket: number; readonly found: LeastCostBlend | null }
  | { readonly ticket: number; readonly fault: string };
