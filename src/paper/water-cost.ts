import { constant } from '../kernel/expression/quantity.ts';
import { factor } from './catalogue.ts';
import type { Effluent } from './effluent.ts';
import type { Plant } from './plant.ts';
import type { Prices } from './prices.ts';
import { type Sheet, notNegative } from './sheet.ts';
import type { LineSpec } from './statement-writer.ts';
import type { Water } from './water.ts';

/** Fresh water, and effluent by volume, by load and by the electricity of its treatment. */
export function waterLines(
  sheet: Sheet,
  { route }: Plant,
  water: Water,
  effluent: Effluent,
  prices: Prices,
): readonly LineSpec[] {
  const input = (
    id: string,
    label: string,
    unit: string,
    name: 'water' | 'effluent-per-m3' | 'effluent-per-kg-cod' | 'effluent-kwh-per-m3' | 'effluent-kwh-per-kg-cod',
  ) => sheet.input({ id, label, unit, figure: factor(name), allowed: notNegative });
  const freshPrice = input('price.water', 'Fresh water', 'EUR/m3', 'water');
  const perVolume = input('price.effluent', 'Effluent charge by volume', 'EUR/m3', 'effluent-per-m3');
  const perLoad = input(
    'price.oxygenDemand',
    'Effluent charge by raw oxygen demand',
    'EUR/kgCOD',
    'effluent-per-kg-cod',
  );
  const powerPerVolume = input(
    'effluent.electricityPerVolume',
    'Effluent treatment electricity by volume',
    'kWh/m3',
    'effluent-kwh-per-m3',
  );
  const powerPerLoad = input(
    'effluent.electricityPerLoad',
    'Effluent treatment electricity by load removed',
    'kWh/kgCOD',
    'effluent-kwh-per-kg-cod',
  );
  // A closed mill may send nothing away; a balance that goes below nothing, on either side, is a warning and no income.
  const volume = water.effluent.greaterOf(constant('0', 'm3/t'));
  const treatment = sheet.define(
    `${route.id}.electricity.effluent`,
    'Electricity, effluent treatment',
    'kWh/t',
    volume.times(powerPerVolume).plus(effluent.demandRemoved.times(powerPerLoad)),
    { where: route.label, note: 'By volume and by oxygen demand removed.' },
  );
  return [
    {
      account: 'water',
      key: 'fresh',
      label: 'Fresh water',
      amount: water.fresh.greaterOf(constant('0', 'm3/t')).times(freshPrice),
      driverId: 'price.water',
    },
    {
      account: 'water',
      key: 'effluent',
      label: 'Effluent, by volume',
      amount: volume.times(perVolume),
      driverId: water.givenInput,
    },
    {
      account: 'water',
      key: 'load',
      label: 'Effluent, by load',
      amount: effluent.rawDemand.times(perLoad),
      driverId: `${route.id}.effluent.rawDemand`,
    },
    {
      account: 'water',
      key: 'treatment',
      label: 'Effluent treatment power',
      amount: treatment.times(prices.electricity),
      driverId: `${route.id}.electricity.effluent`,
    },
  ];
}
