import { constant } from '../kernel/expression/quantity.ts';
import { factor } from './catalogue.ts';
import { plainFigure } from './figure.ts';
import type { HeatSupply } from './heat-supply.ts';
import type { Heat } from './heat.ts';
import type { Plant } from './plant.ts';
import type { Residues } from './residues.ts';
import { type Sheet, notNegative } from './sheet.ts';
import type { LineSpec } from './statement-writer.ts';

/**
 * The price of carbon is paid on fuel burned and on the fossil part of residues burned in the own boiler, less free allocation; a
 * surplus of allocation is not sold. Electricity carries its own carbon price already.
 */
export function carbonLine(
  sheet: Sheet,
  { route }: Plant,
  supply: HeatSupply,
  heat: Heat,
  residues: Residues,
): LineSpec {
  const where = route.label;
  const fromFuel = heat.total.minus(residues.heat).times(supply.carbon);
  const emitted = sheet.define(
    `${route.id}.carbon.priced`,
    'Fossil carbon that is priced',
    'kgCO2e/t',
    fromFuel.plus(residues.fossilCarbon),
    { where, note: 'Boiler fuel, and the fossil part of residues burned in the own boiler.' },
  );
  const free = sheet.input({
    id: `${route.id}.freeAllocation`,
    label: 'Free allocation',
    where,
    unit: 'kgCO2e/t',
    figure: plainFigure('0', '0', '400', 'kgCO2e/t', 'none', 'none entered'),
    allowed: notNegative,
  });
  const payable = sheet.define(
    `${route.id}.carbon.payable`,
    'Carbon to be paid for',
    'kgCO2e/t',
    emitted.minus(free).greaterOf(constant('0', 'kgCO2e/t')),
    { where, note: 'What is priced less free allocation, never below nothing.' },
  );
  const price = sheet.input({
    id: 'price.carbon',
    label: 'Carbon price',
    unit: 'EUR/tCO2e',
    figure: factor('carbon-price'),
    allowed: notNegative,
  });
  return {
    account: 'carbon',
    key: 'carbon',
    label: 'Carbon',
    amount: payable.times(constant('0.001', 'tCO2e/kgCO2e')).times(price),
    driverId: `${route.id}.carbon.payable`,
    nature: 'policy',
  };
}
