import type { GivenBlend, LeastCostBlend } from '../../../src/index.ts';

/** The cheapest blend of the lots of a case, by its text, on a day. The ticket comes back on the answer. */
export interface BlendAsked {
  readonly ticket: number;
  readonly text: string;
  readonly today: string;
}

export interface Blends {
  readonly cheapest: LeastCostBlend;
  /** By the shares that somebody gave; null where nobody did. */
  readonly given: GivenBlend | null;
}

export type BlendAnswered =
  { readonly ticket: number; readonly found: Blends | null } | { readonly ticket: number; readonly fault: string };
