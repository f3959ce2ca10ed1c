import { type Quantity, constant } from '../../kernel/expression/quantity.ts';
import { countsSurplus, freeAllocationIdOf } from '../free-allocation.ts';
import type { ByYear } from './by-year.ts';
import { type PlanSheet, yearInput } from './plan-sheet.ts';

/** Free allocation of each year over today's: what is given for the year, or for the last year before it; null before any is given. */
export function allocationOfYears(sheet: PlanSheet): ByYear {
  const scales: (Quantity | null)[] = [null];
  for (const year of sheet.years.slice(1)) {
    const given = yearInput(sheet, 'year.allocation', "Free allocation over today's", year, '1', { entry: '%' });
    scales[year] = given ?? scales[year - 1] ?? null;
  }
  return (year) => scales[year] ?? null;
}

/** What the project saves of carbon cost in a year whose free allocation differs from today's, at today's price; null in other years. */
export function carbonByAllocation(sheet: PlanSheet, allocation: ByYear): ByYear {
  return (year) => {
    const scale = allocation(year);
    if (scale === null) return null;
    return carbonCostOf(sheet, sheet.base, { scale }).minus(carbonCostOf(sheet, sheet.project, { scale }));
  };
}

/** The yearly carbon cost of a route, as its statement works it out, with another allocation or with other residues burned. */
export function carbonCostOf(
  { sheet, mill }: PlanSheet,
  { plant }: PlanSheet['base'],
  { scale, more }: { readonly scale: Quantity | null; readonly more?: Quantity },
): Quantity {
  const later = (id: string, unit: string): Quantity => sheet.graph.later(id, unit);
  const today = later(`${plant.route.id}.carbon.priced`, 'kgCO2e/t');
  const priced = more === undefined ? today : today.plus(more);
  const free = later(freeAllocationIdOf(plant.route), 'kgCO2e/t');
  const owed = priced.minus(scale === null ? free : free.times(scale));
  const payable = countsSurplus(sheet) ? owed : owed.greaterOf(constant('0', 'kgCO2e/t'));
  const price = later('price.carbon', `${sheet.case.currency}/tCO2e`);
  return payable.times(constant('0.001', 'tCO2e/kgCO2e')).times(price).times(mill.tonnes);
}
