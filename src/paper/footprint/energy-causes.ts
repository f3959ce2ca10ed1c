import type { Quantity } from '../../kernel/expression/quantity.ts';
import { boughtPower } from '../bought-power.ts';
import { carbonFactor } from '../carbon-factors.ts';
import type { Plant } from '../plant.ts';
import type { Sheet } from '../sheet.ts';
import { basisOf } from './basis.ts';
import type { Cause } from './cause.ts';
import { averageOf } from './contract-power.ts';
import { factorInput } from './factor-input.ts';

/**
 * Fuel of the own boiler is scope 1 and its supply scope 3; bought heat and power are scope 2, losses and supply of power scope 3. Heat is
 * either made or bought, never both, and heat from residues has taken its place before.
 */
export function energyCauses(sheet: Sheet, plant: Plant, made: Quantity): readonly Cause[] {
  const own = plant.route.heat === 'own boiler';
  return [...(own ? fuelCauses(sheet, plant, made) : boughtHeat(sheet, made)), ...powerCauses(sheet, plant)];
}

function fuelCauses(sheet: Sheet, { route }: Plant, made: Quantity): readonly Cause[] {
  const { fuel } = basisOf(sheet.case.basis);
  const burned = sheet.define(
    `${route.id}.fuel`,
    'Fuel burned, net calorific value',
    'GJ/t',
    made.dividedBy(sheet.graph.later('boiler.efficiency', '1')),
    {
      where: route.label,
      note: 'Heat from the boiler over its efficiency.',
    },
  );
  const supply = factorInput(
    sheet,
    'carbon.fuelUpstream',
    'Supply of the boiler fuel',
    carbonFactor(`fuel.${fuel}.upstream`),
  );
  return [
    {
      id: 'fuel',
      label: 'Fuel burned',
      scope: 'scope 1',
      amount: burned.times(sheet.graph.later('carbon.fuel', 'kgCO2e/GJ')),
      factorIds: ['carbon.fuel'],
      note: 'Fuel burned in the own boiler times its carbon.',
    },
    {
      id: 'fuelSupply',
      label: 'Fuel, before the mill',
      scope: 'scope 3',
      amount: burned.times(supply),
      factorIds: ['carbon.fuelUpstream'],
      note: 'Finding, cleaning and bringing the fuel.',
    },
  ];
}

function boughtHeat(sheet: Sheet, bought: Quantity): readonly Cause[] {
  const made = factorInput(sheet, 'carbon.boughtHeat', 'Bought heat', carbonFactor('heat.bought'));
  const supply = factorInput(
    sheet,
    'carbon.boughtHeatUpstream',
    'Supply of the fuel of bought heat',
    carbonFactor('heat.bought.upstream'),
  );
  return [
    {
      id: 'boughtHeat',
      label: 'Bought heat',
      scope: 'scope 2',
      amount: bought.times(made),
      factorIds: ['carbon.boughtHeat'],
      note: 'Heat bought times its carbon.',
    },
    {
      id: 'boughtHeatSupply',
      label: 'Heat, before the mill',
      scope: 'scope 3',
      amount: bought.times(supply),
      factorIds: ['carbon.boughtHeatUpstream'],
      note: 'Finding and bringing the fuel of bought heat.',
    },
  ];
}

/** By location: the average of the grid. A contract stands beside (contract-power.ts), never in the sum. */
function powerCauses(sheet: Sheet, { route }: Plant): readonly Cause[] {
  const { grid } = basisOf(sheet.case.basis);
  const used = boughtPower(sheet, route.id);
  const average = factorInput(sheet, 'carbon.grid', 'Grid electricity, average by location', averageOf(grid));
  const supply = factorInput(
    sheet,
    'carbon.gridUpstream',
    'Grid losses and supply of its fuels',
    carbonFactor('electricity.upstream'),
  );
  return [
    {
      id: 'power',
      label: 'Bought power',
      scope: 'scope 2',
      amount: used.times(average),
      factorIds: ['carbon.grid'],
      note: 'Electricity times the average of the grid.',
    },
    {
      id: 'powerSupply',
      label: 'Power, before the mill',
      scope: 'scope 3',
      amount: used.times(supply),
      factorIds: ['carbon.gridUpstream'],
      note: 'Losses of the grid and supply of its fuels.',
    },
  ];
}
