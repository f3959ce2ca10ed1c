import type { Quantity } from '../../kernel/expression/quantity.ts';
import { boughtPower } from '../bought-power.ts';
import { type CarbonFigure, gridFactor } from '../carbon-factors.ts';
import type { Plant } from '../plant.ts';
import type { Sheet } from '../sheet.ts';
import { basisOf } from './basis.ts';
import { factorInput } from './factor-input.ts';

export const contractPowerIdOf = (routeId: string): string => `${routeId}.footprint.powerByContract`;
export const contractScopeIdOf = (routeId: string): string => `${routeId}.footprint.scope2ByContract`;

/**
 * Bought power by its contract (market-based), beside the sum; nothing where no contract is given. What a contract is usually like nobody
 * can say: from no carbon at all to somewhat above the grid's average (common practice, no source).
 */
export function contractPower(sheet: Sheet, { route }: Plant): Quantity | null {
  if (!sheet.isGiven('carbon.contract')) return null;
  const average = averageOf(basisOf(sheet.case.basis).grid);
  const figure: CarbonFigure = {
    ...average,
    low: '0',
    source: 'practice',
    status: 'practice',
    year: '',
    note: 'the average of the grid, where no contract says otherwise',
  };
  const factor = factorInput(sheet, 'carbon.contract', 'Electricity by contract (market-based)', figure);
  return sheet.define(
    contractPowerIdOf(route.id),
    'Bought power, by contract',
    'kgCO2e/t',
    boughtPower(sheet, route.id).times(factor),
    { where: route.label, note: 'Market-based, beside the sum.' },
  );
}

/** Average of a region's grid. Regions that the data set does not hold were refused when the case was opened. */
export function averageOf(region: string): CarbonFigure {
  const figure = gridFactor(region);
  if (figure === undefined) throw new Error(`No grid region "${region}"`);
  return figure;
}
