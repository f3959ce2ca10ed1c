import { type Quantity, constant, total } from '../kernel/expression/quantity.ts';
import { factor } from './catalogue.ts';
import { freeAllocation, allocationDriverOf } from './free-allocation.ts';
import type { HeatSupply } from './heat-supply.ts';
import type { Plant } from './plant.ts';
import type { Residues } from './residues.ts';
import { type Sheet, notNegative } from './sheet.ts';
import type { LineSpec } from './statement-writer.ts';

const tonnes = constant('0.001', 'tCO2e/kgCO2e');

/**
 * The price of carbon is paid on fuel burned and on the fossil part of residues burned in the own boiler, less free allocation. Methane of
 * the own landfill and bought power join only where the case says so, for a power price usually holds its carbon already.
 *
 * Cash view: what is emitted above the allocation is paid for; a surplus is sold only where the case says so. Opportunity view: all that is
 * emitted costs its price, since an allowance that is used cannot be sold, and the allocation is an income beside it, whichever the route.
 */
export function carbonLines(
  sheet: Sheet,
  plant: Plant,
  supply: HeatSupply,
  heatMade: Quantity,
  residues: Residues,
): readonly LineSpec[] {
  const { route } = plant;
  const emitted = pricedCarbon(sheet, plant, heatMade.times(supply.carbon), residues.fossilCarbon);
  const free = freeAllocation(sheet, plant);
  const price = sheet.input({
    id: 'price.carbon',
    label: 'Carbon price',
    unit: 'EUR/tCO2e',
    figure: factor('carbon-price'),
    allowed: notNegative,
  });
  const line = { account: 'carbon', nature: 'policy' } as const;
  const worth = (carbon: Quantity): Quantity => carbon.times(tonnes).times(price);
  if (sheet.case.carbonPrice?.view === 'opportunity') {
    const income = worth(free);
    return [
      {
        ...line,
        key: 'carbon',
        label: 'Carbon, all of it',
        amount: worth(emitted),
        driverId: `${route.id}.carbon.priced`,
        note: 'All that is emitted at its price: an allowance that is used cannot be sold.',
      },
      {
        ...line,
        key: 'freeAllocation',
        label: 'Free allocation, as an income',
        amount: constant('0', income.unit).minus(income),
        driverId: allocationDriverOf(sheet, route),
        note: 'Allowances that come for nothing at the price they would fetch.',
      },
    ];
  }
  const payable = payableCarbon(sheet, plant, emitted.minus(free));
  return [{ ...line, key: 'carbon', label: 'Carbon', amount: worth(payable), driverId: `${route.id}.carbon.payable` }];
}

function pricedCarbon(sheet: Sheet, { route }: Plant, fromFuel: Quantity, fossilBurned: Quantity): Quantity {
  const scheme = sheet.case.carbonPrice ?? {};
  const also = (wanted: boolean | undefined, cause: string): readonly Quantity[] =>
    wanted === true ? [sheet.graph.later(`${route.id}.footprint.${cause}`, 'kgCO2e/t')] : [];
  const priced = [fromFuel, fossilBurned, ...also(scheme.ownLandfill, 'ownLandfill'), ...also(scheme.power, 'power')];
  return sheet.define(
    `${route.id}.carbon.priced`,
    'Fossil carbon that is priced',
    'kgCO2e/t',
    total(priced, 'kgCO2e/t'),
    {
      where: route.label,
      note: 'Boiler fuel and the fossil part of residues burned in the own boiler, and what else the case puts under the price.',
    },
  );
}

function payableCarbon(sheet: Sheet, { route }: Plant, owed: Quantity): Quantity {
  const isSold = sheet.case.carbonPrice?.surplus === true;
  return sheet.define(
    `${route.id}.carbon.payable`,
    'Carbon to be paid for',
    'kgCO2e/t',
    isSold ? owed : owed.greaterOf(constant('0', 'kgCO2e/t')),
    {
      where: route.label,
      note: isSold
        ? 'What is priced less free allocation; a surplus is sold.'
        : 'What is priced less free allocation, never below nothing.',
    },
  );
}
