import { type Quantity, constant } from '../../kernel/expression/quantity.ts';
import { type PlanSheet, yearInput } from './plan-sheet.ts';

/**
 * What the project saves of carbon cost in a year whose free allocation differs from today's: the allocation of both routes is scaled by what
 * is given for the year, or for the last year before it. Null for years before any is given.
 */
export function carbonByAllocation(sheet: PlanSheet): (year: number) => Quantity | null {
  const scales: (Quantity | null)[] = [null];
  for (const year of sheet.years.slice(1)) {
    const given = yearInput(sheet, 'year.allocation', "Free allocation over today's", year, '1', '%');
    scales[year] = given ?? scales[year - 1] ?? null;
  }
  return (year) => {
    const scale = scales[year] ?? null;
    if (scale === null) return null;
    return costOf(sheet, sheet.base, scale).minus(costOf(sheet, sheet.project, scale));
  };
}

/** The yearly carbon cost of a route, as its statement works it out, with another allocation. */
function costOf({ sheet, mill }: PlanSheet, { plant }: PlanSheet['base'], scale: Quantity): Quantity {
  const later = (id: string, unit: string): Quantity => sheet.graph.later(id, unit);
  const priced = later(`${plant.route.id}.carbon.priced`, 'kgCO2e/t');
  const owed = priced.minus(
    later(`${plant.route.id}.freeAllocation`, 'kgCO2e/t').times(plant.machine.service).times(scale),
  );
  const payable = sheet.case.carbonPrice?.surplus === true ? owed : owed.greaterOf(constant('0', 'kgCO2e/t'));
  const price = later('price.carbon', `${sheet.case.currency}/tCO2e`);
  return payable.times(constant('0.001', 'tCO2e/kgCO2e')).times(price).times(mill.tonnes);
}
