import type { Quantity } from '../kernel/expression/quantity.ts';

/** Prices that every route pays alike. */
export interface Prices {
  /** Money per kWh. */
  readonly electricity: Quantity;
}
