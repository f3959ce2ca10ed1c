import type { Quantity } from '../../kernel/expression/quantity.ts';

export type Scope = 'scope 1' | 'scope 2' | 'scope 3';

/** One thing that greenhouse gases come from, per tonne of product. */
export interface Cause {
  readonly id: string;
  readonly label: string;
  readonly scope: Scope;
  /** kgCO2e/t. */
  readonly amount: Quantity;
  /** Inputs that are its factors, to name factor, year and boundary beside it. */
  readonly factorIds: readonly string[];
  readonly note: string;
}
