import { type Quantity, constant, total } from '../kernel/expression/quantity.ts';
import { factor } from './catalogue.ts';
import { plainFigure } from './figure.ts';
import type { HeatSupply } from './heat-supply.ts';
import type { Heat } from './heat.ts';
import type { Plant } from './plant.ts';
import type { Residues } from './residues.ts';
import { type Sheet, notNegative } from './sheet.ts';
import type { LineSpec } from './statement-writer.ts';

/**
 * The price of carbon is paid on fuel burned and on the fossil part of residues burned in the own boiler, less free allocation. Methane of
 * the own landfill and bought power join only where the case says so, for a power price usually holds its carbon already; a surplus of
 * allocation is sold only where the case says so.
 */
export function carbonLine(
  sheet: Sheet,
  { route, machine }: Plant,
  supply: HeatSupply,
  heat: Heat,
  residues: Residues,
): LineSpec {
  const where = route.label;
  const scheme = sheet.case.carbonPrice ?? {};
  const fromFuel = heat.total.minus(residues.heat).times(supply.carbon);
  const also = (wanted: boolean | undefined, cause: string): readonly Quantity[] =>
    wanted === true ? [sheet.graph.later(`${route.id}.footprint.${cause}`, 'kgCO2e/t')] : [];
  const priced = [
    fromFuel,
    residues.fossilCarbon,
    ...also(scheme.ownLandfill, 'ownLandfill'),
    ...also(scheme.power, 'power'),
  ];
  const emitted = sheet.define(
    `${route.id}.carbon.priced`,
    'Fossil carbon that is priced',
    'kgCO2e/t',
    total(priced, 'kgCO2e/t'),
    {
      where,
      note: 'Boiler fuel and the fossil part of residues burned in the own boiler, and what else the case puts under the price.',
    },
  );
  const allocation = sheet.input({
    id: `${route.id}.freeAllocation`,
    label: 'Free allocation',
    where,
    unit: 'kgCO2e/t',
    figure: plainFigure('0', '0', '400', 'kgCO2e/t', 'none', 'none entered'),
    allowed: notNegative,
  });
  const free = allocation.times(machine.service);
  const payable = sheet.define(
    `${route.id}.carbon.payable`,
    'Carbon to be paid for',
    'kgCO2e/t',
    scheme.surplus === true ? emitted.minus(free) : emitted.minus(free).greaterOf(constant('0', 'kgCO2e/t')),
    {
      where,
      note:
        scheme.surplus === true
          ? 'What is priced less free allocation; a surplus is sold.'
          : 'What is priced less free allocation, never below nothing.',
    },
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
