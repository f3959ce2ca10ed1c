import type { LotFigure } from '../../case/lots.ts';
import type { PriceBasis } from '../../case/case.ts';
import type { Entry } from '../../paper/entry.ts';
import { fraction, notNegative, positive } from '../../paper/sheet.ts';
import type { Bounds } from '../../kernel/expression/operation.ts';

const tonneOf: Readonly<Record<PriceBasis, string>> = { 'as received': 't-ar', 'air-dry': 'adt', 'bone-dry': 'bdt' };

/** The unit of a lot's price: money of the case for the tonne that it is asked for. */
export function priceUnit(currency: string, basis: PriceBasis): string {
  return `${currency}/${tonneOf[basis]}`;
}

type Kind = { readonly label: string; readonly unit: string; readonly allowed: Bounds };
const price = (label: string): Kind => ({ label, unit: 'price', allowed: {} });
const share = (label: string): Kind => ({ label, unit: '%', allowed: fraction });

const kinds: Readonly<Record<LotFigure, Kind>> = {
  tonnes: { label: 'Weighed', unit: 't-ar', allowed: positive },
  price: price('Price asked'),
  index: price('Index of the contract'),
  slope: { label: 'Times', unit: '1', allowed: {} },
  constant: price('Plus'),
  floor: price('Floor'),
  cap: price('Cap'),
  rebate: price('Rebate'),
  paymentDays: { label: 'Days until payment', unit: 'd', allowed: { least: '0', most: '365' } },
  freight: { label: 'Freight', unit: 'EUR/t-ar', allowed: notNegative },
  distance: { label: 'Distance', unit: 'km', allowed: notNegative },
  freightRate: { label: 'Freight by distance', unit: 'EUR/t-km', allowed: notNegative },
  loadMoney: { label: 'Freight of a load', unit: 'EUR', allowed: notNegative },
  backhaul: share('Borne by a load back'),
  payload: { label: 'Payload', unit: 't-ar', allowed: positive },
  volume: { label: 'Volume of a load', unit: 'm3', allowed: positive },
  baleDensity: { label: 'Density of the bales', unit: 't-ar/m3', allowed: positive },
  moistureLimit: share('Moisture agreed'),
  moistureTolerance: share('Tolerance above it'),
  unusableLimit: share('Unusable material agreed'),
  downgradePrice: price('Price of the lower grade'),
  lights: share('Film and foam'),
  heavies: share('Sand, glass and metal'),
  wire: share('Bale wire'),
  wetStrength: share('Wet-strength paper'),
  ash: share('Ash'),
};

/** What a figure of a lot is called, its unit, and what can be true of it. `id` says which lot's. */
export function lotEntry(currency: string, lotId: string, basis: PriceBasis, figure: LotFigure): Entry {
  const { label, unit, allowed } = kinds[figure];
  const named = unit === 'price' ? priceUnit(currency, basis) : unit.replace('EUR', currency);
  return { id: `lots.${lotId}.${figure}`, label, unit: named, allowed };
}

/** Readings of a lot, one entry for each of them. */
export function readingEntry(lotId: string, what: 'moisture' | 'unusable'): Entry {
  const label = what === 'moisture' ? 'Moisture as received' : 'Unusable material';
  return { id: `lots.${lotId}.${what}`, label, unit: '%', allowed: fraction };
}
