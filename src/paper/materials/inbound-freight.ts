import type { Material } from '../../case/case.ts';
import type { Quantity } from '../../kernel/expression/quantity.ts';
import { plainFigure } from '../figure.ts';
import { type Sheet, fraction, notNegative, positive } from '../sheet.ts';
import { freightPerLoad, loadMass } from './freight-per-load.ts';

/** What brings a bone-dry tonne of a material to the mill, and the input that sets it. */
interface InboundFreight {
  readonly freight: Quantity;
  readonly freightInput: string;
}

/** The price of one load; where it is given, freight is worked out by the load and the price per tonne has no part in it. */
export const loadPriceIdOf = (material: string): string => `material.${material}.load.price`;

/** Freight by the tonne or by the load, and handling: always per tonne as received, whatever the basis of the price. */
export function inboundFreight(sheet: Sheet, material: Material, received: Quantity): InboundFreight {
  const id = `material.${material.id}`;
  const where = material.label;
  const perReceived = (what: string, label: string): Quantity =>
    sheet.input({
      id: `${id}.${what}`,
      label,
      where,
      unit: 'EUR/t-ar',
      figure: plainFigure('0', '0', '60', 'EUR/t-ar', 'none', 'none entered'),
      allowed: notNegative,
    });
  const byTonne = perReceived('freight', 'Inbound freight');
  const byLoad = freightByLoad(sheet, material);
  const carriage = (byLoad ?? byTonne).plus(perReceived('handling', 'Handling'));
  const freight = sheet.define(
    `${id}.freightCost`,
    'Freight and handling per bone-dry tonne',
    'EUR/bdt',
    carriage.times(received),
    {
      where,
      note: 'Freight and handling are charged per tonne as received, whatever the basis of the price.',
    },
  );
  return { freight, freightInput: byLoad === null ? `${id}.freight` : loadPriceIdOf(material.id) };
}

/** Money per tonne as received, from what a load costs and holds; null where nobody gave the price of a load. */
function freightByLoad(sheet: Sheet, material: Material): Quantity | null {
  const where = material.label;
  const id = `material.${material.id}.load`;
  const priceOfLoad = {
    id: loadPriceIdOf(material.id),
    label: 'Freight of one load',
    where,
    unit: 'EUR/load',
    allowed: notNegative,
  };
  if (!sheet.has(priceOfLoad)) return null;
  const holds = (name: string, label: string, unit: string, ...range: readonly [string, string, string]): Quantity =>
    sheet.input({
      id: `${id}.${name}`,
      label,
      where,
      unit,
      figure: plainFigure(...range, unit),
      allowed: positive,
    });
  const load = {
    price: sheet.input(priceOfLoad),
    backhaul: sheet.optional({
      id: `${id}.backhaul`,
      label: 'Share of the load that a way back with goods pays',
      where,
      unit: '1',
      entry: '%',
      allowed: fraction,
    }),
    payload: holds('payload', 'Payload of a load', 't-ar/load', '25', '20', '28'),
    volume: holds('volume', 'Room in a load', 'm3/load', '85', '60', '100'),
    baleDensity: holds('baleDensity', 'Density of the bales', 'kg/m3', '500', '250', '700'),
  };
  sheet.define(`${id}.mass`, 'A load holds', 't-ar/load', loadMass(load), {
    where,
    note: 'The payload, or the room times the density of the bales, whichever is less.',
  });
  return sheet.define(`${id}.freight`, 'Inbound freight, by the load', 'EUR/t-ar', freightPerLoad(load), {
    where,
    note: 'Price of a load, less what the way back pays, over what a load holds.',
  });
}
