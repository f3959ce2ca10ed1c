import { presentValue } from './present-value.ts';

/**
 * Present value won per unit of capital laid out, plus one: 1 + NPV / present value of the outlays. Flows are net of the outlays, which
 * stand apart as positive amounts, both one money a year with the first undiscounted; the rate per year is a share. Above 1 the plan earns
 * more than the rate. Null where no capital is laid out; no number (NaN) where there is no present value. Standard definition, from memory.
 */
export function profitabilityIndex(flows: readonly number[], outlays: readonly number[], rate: number): number | null {
  const capital = presentValue(outlays, rate);
  return capital <= 0 ? null : 1 + presentValue(flows, rate) / capital;
}
