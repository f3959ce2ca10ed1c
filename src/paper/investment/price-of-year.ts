import { type Quantity, constant } from '../../kernel/expression/quantity.ts';
import type { ByYear } from './by-year.ts';
import { type PlanSheet, yearInput } from './plan-sheet.ts';
import { type PriceGroup, priceGroups } from './price-group.ts';

/** Price of a group in each year over today's; null where it is today's. */
export type PriceOfYear = (group: PriceGroup) => ByYear;

/** Writes the prices of each group down once, when they are first asked for: what nobody asks for is no input. */
export function pricesOfYears(sheet: PlanSheet): PriceOfYear {
  const known = new Map<PriceGroup, ByYear>();
  return (group) => {
    const found = known.get(group) ?? risen(sheet, group);
    known.set(group, found);
    return found;
  };
}

/** An index given for the year, else the last one before it, grown on from there. Growth counts from year 0 of the plan. */
function risen(sheet: PlanSheet, group: PriceGroup): ByYear {
  const label = priceGroups.find(({ id }) => id === group)?.label ?? group;
  const growth = growthOf(sheet, group, label);
  const made: (Quantity | null)[] = [null];
  for (const year of sheet.years.slice(1)) {
    const given = yearInput(sheet, `year.${group}`, `${label}, price over today's`, year, '1', { entry: '%' });
    const before = made[year - 1] ?? null;
    made[year] = given ?? (growth === null ? before : before === null ? growth : before.times(growth));
  }
  return (year) => made[year] ?? null;
}

/** 1 + growth over general inflation; null where nobody gave one. */
function growthOf({ sheet, where }: PlanSheet, group: PriceGroup, label: string): Quantity | null {
  const spec = {
    id: `investment.growth.${group}`,
    label: `${label}, growth over inflation`,
    where,
    unit: '1',
    entry: '%',
    allowed: { least: '-50', most: '100' },
  };
  return sheet.has(spec) ? sheet.input(spec).plus(constant('1')) : null;
}
