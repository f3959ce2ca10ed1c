import { presentValue } from './present-value.ts';

/**
 * The one price per tonne, the same every year, that pays for all costs: present value of the costs over present value of the tonnes, both
 * a year with the first undiscounted, at the same real rate (a share per year) where costs stand at constant prices. Null where no tonnes
 * are made; no number (NaN) where there is no present value. Standard definition, from memory.
 */
export function levelisedCost(costs: readonly number[], tonnes: readonly number[], rate: number): number | null {
  const made = presentValue(tonnes, rate);
  return made <= 0 ? null : presentValue(costs, rate) / made;
}
