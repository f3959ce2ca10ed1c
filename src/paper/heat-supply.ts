import type { Route } from '../case/case.ts';
import { type Quantity, constant } from '../kernel/expression/quantity.ts';
import { carbonFactor } from './carbon-factors.ts';
import { factor } from './catalogue.ts';
import { plainFigure } from './figure.ts';
import { basisOf } from './footprint/basis.ts';
import { factorInput } from './footprint/factor-input.ts';
import { type Sheet, notNegative, positive } from './sheet.ts';

/** Where heat comes from and what a GJ of it costs. */
export interface HeatSupply {
  /** Money per GJ of useful heat. */
  readonly price: Quantity;
  /** The input that sets the price. */
  readonly priceInput: string;
  /** Fossil carbon of the mill's own boiler per GJ of useful heat, kgCO2e/GJ; nothing where heat is bought. */
  readonly carbon: Quantity;
}

export type HeatSupplies = ReadonlyMap<Route['heat'], HeatSupply>;

/** One boiler serves the mill, and one contract for bought heat; each is there if a route uses it. */
export function heatSupplies(sheet: Sheet): HeatSupplies {
  const used = new Set(sheet.case.routes.map((route) => route.heat));
  return new Map([...used].map((kind) => [kind, kind === 'bought heat' ? boughtHeat(sheet) : ownBoiler(sheet)]));
}

function boughtHeat(sheet: Sheet): HeatSupply {
  const price = sheet.input({ id: 'price.heat', label: 'Bought heat', unit: 'EUR/GJ', allowed: notNegative });
  return { price, priceInput: 'price.heat', carbon: constant('0', 'kgCO2e/GJ') };
}

/** Price, efficiency and carbon factor of a fuel share one calorific basis: net. */
function ownBoiler(sheet: Sheet): HeatSupply {
  const fuel = sheet.input({
    id: 'price.fuel',
    label: 'Boiler fuel, net calorific value',
    unit: 'EUR/GJ',
    figure: factor('fuel-per-gj'),
    allowed: notNegative,
  });
  const efficiency = sheet.input({
    id: 'boiler.efficiency',
    label: 'Boiler efficiency, net calorific value',
    unit: '1',
    figure: factor('boiler-efficiency'),
    allowed: { above: '0', most: '110' },
  });
  // Natural gas is often priced on its gross calorific value: the same gas holds 1.108 times as many GJ gross as net.
  const ratioFigure = plainFigure(
    '1',
    '1',
    '1.108',
    '1',
    'definition',
    '1 where the price is on the net value; 1.108 for natural gas priced gross',
  );
  const ratio = sheet.input({
    id: 'price.fuelBasis',
    label: 'Gross to net calorific value of the fuel as priced',
    unit: '1',
    figure: ratioFigure,
    allowed: positive,
  });
  const fuelCarbon = factorInput(
    sheet,
    'carbon.fuel',
    'Carbon of the boiler fuel, net calorific value',
    carbonFactor(`fuel.${basisOf(sheet.case.basis).fuel}.use`),
  );
  return {
    price: sheet.define('price.usefulHeat', 'Heat from the boiler', 'EUR/GJ', fuel.times(ratio).dividedBy(efficiency), {
      note: 'Fuel price over boiler efficiency.',
    }),
    priceInput: 'price.fuel',
    carbon: sheet.define(
      'carbon.usefulHeat',
      'Fossil carbon of boiler heat',
      'kgCO2e/GJ',
      fuelCarbon.dividedBy(efficiency),
      { note: 'Carbon of the fuel over boiler efficiency.' },
    ),
  };
}
