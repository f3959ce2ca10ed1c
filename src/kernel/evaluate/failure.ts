import type { Bounds } from '../expression/operation.ts';

/** Why a quantity has no value. It spoils what is made of it and nothing else; `at` is the node where it began. */
export class Failure {
  readonly at: number;
  readonly reason: Reason;
  constructor(at: number, reason: Reason) {
    this.at = at;
    this.reason = reason;
  }
}

export type Reason =
  | { readonly kind: 'no value given' }
  | { readonly kind: 'division by zero' }
  | { readonly kind: 'no real power'; readonly base: string; readonly exponent: string }
  | { readonly kind: 'outside'; readonly value: string; readonly bounds: Bounds };
