import type { LotFigure } from '../../case/lots.ts';

/** What is to be said of a lot beside its figures: a closed union, whose sentences are made in the wording. */
export type LotNote =
  | { readonly kind: 'lacks'; readonly figure: LotFigure }
  | { readonly kind: 'usual moisture'; readonly moisture: number }
  | { readonly kind: 'usual contents' }
  | { readonly kind: 'usual freight'; readonly freight: number }
  | { readonly kind: 'single reading' }
  | { readonly kind: 'no dry matter' }
  | { readonly kind: 'nothing usable' }
  | { readonly kind: 'more than the whole' }
  | { readonly kind: 'fee received' }
  | { readonly kind: 'expired'; readonly day: string }
  | { readonly kind: 'over tolerance'; readonly what: 'non-paper' | 'unwanted'; readonly over: number }
  | { readonly kind: 'refused' }
  | { readonly kind: 'not settled on this basis' }
  | { readonly kind: 'unknown grade'; readonly code: string }
  | { readonly kind: 'cannot be worked out' };
