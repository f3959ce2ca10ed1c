import type { Route } from '../case/case.ts';
import { type Quantity, constant } from '../kernel/expression/quantity.ts';
import { plainFigure } from './figure.ts';
import type { Plant } from './plant.ts';
import { type InputSpec, type Sheet, notNegative } from './sheet.ts';

const yearlySpec: InputSpec = {
  id: 'carbon.freeAllocation',
  label: 'Free allocation a year, whichever route is made',
  unit: 'tCO2e/a',
  allowed: notNegative,
};

/** Where the whole free allocation of a route stands. */
export const freeAllocationIdOf = (route: Route): string => `${route.id}.carbon.free`;

/** Where its free allocation is looked up: the figure by the tonne alone, or what that comes to with the figure of the year. */
export const allocationDriverOf = (sheet: Sheet, route: Route): string =>
  sheet.isGiven(yearlySpec.id) ? freeAllocationIdOf(route) : `${route.id}.freeAllocation`;

/**
 * Free allocation per tonne of the reference product, kgCO2e/t: what the route gets by the tonne made, for the tonnes of the same service,
 * and its part of what the mill gets a year.
 */
export function freeAllocation(sheet: Sheet, { route, mill, machine }: Plant): Quantity {
  const byTonne = sheet
    .input({
      id: `${route.id}.freeAllocation`,
      label: 'Free allocation',
      where: route.label,
      unit: 'kgCO2e/t',
      figure: plainFigure('0', '0', '400', 'kgCO2e/t', 'none', 'none entered'),
      allowed: notNegative,
    })
    .times(machine.service);
  const byYear = sheet.has(yearlySpec)
    ? sheet.input(yearlySpec).dividedBy(mill.tonnes).times(constant('1000', 'kgCO2e/tCO2e'))
    : null;
  const all = byYear === null ? byTonne : byTonne.plus(byYear);
  return sheet.define(freeAllocationIdOf(route), 'Free allocation, all', 'kgCO2e/t', all, {
    where: route.label,
    note: 'By the tonne made, for the tonnes of the same service, and what the mill gets a year over its tonnes.',
  });
}

/** Whether allocation that is left over counts: sold where the case says so, and always where it is an income of its own. */
export const countsSurplus = ({ case: { carbonPrice } }: Sheet): boolean =>
  carbonPrice?.surplus === true || carbonPrice?.view === 'opportunity';
