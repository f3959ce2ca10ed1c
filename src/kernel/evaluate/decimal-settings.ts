import { Decimal as Library } from 'decimal.js';

/**
 * The decimal arithmetic of record: 34 significant digits, half to even, as IEEE 754-2008 decimal128. A clone, so that nobody
 * else's settings are touched and nobody else's settings reach here.
 */
export const Decimal = Library.clone({ precision: 34, rounding: Library.ROUND_HALF_EVEN, toExpNeg: -40, toExpPos: 40 });
export type Decimal = Library;
