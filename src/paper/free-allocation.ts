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

/** Where the free allocation of a route stands: by the tonne of product alone, or together with what the mill gets a year. */
export const freeAllocationIdOf = (sheet: Sheet, route: Route): string =>
  sheet.isGiven(yearlySpec.id) ? `${route.id}.carbon.free` : `${route.id}.freeAllocation`;

/** Free allocation per tonne of product, kgCO2e/t: what the route gets by the tonne, and its part of what the mill gets a year. */
export function freeAllocation(sheet: Sheet, { route, mill }: Plant): Quantity {
  const byTonne = sheet.input({
    id: `${route.id}.freeAllocation`,
    label: 'Free allocation',
    where: route.label,
    unit: 'kgCO2e/t',
    figure: plainFigure('0', '0', '400', 'kgCO2e/t', 'none', 'none entered'),
    allowed: notNegative,
  });
  if (!sheet.has(yearlySpec)) return byTonne;
  const byYear = sheet.input(yearlySpec).dividedBy(mill.tonnes).times(constant('1000', 'kgCO2e/tCO2e'));
  return sheet.define(freeAllocationIdOf(sheet, route), 'Free allocation, all', 'kgCO2e/t', byTonne.plus(byYear), {
    where: route.label,
    note: 'By the tonne of product, and what the mill gets a year over its tonnes.',
  });
}

/** Whether allocation that is left over counts: sold where the case says so, and always where it is an income of its own. */
export const countsSurplus = ({ case: { carbonPrice } }: Sheet): boolean =>
  carbonPrice?.surplus === true || carbonPrice?.view === 'opportunity';
