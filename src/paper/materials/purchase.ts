import type { Material } from '../../case/case.ts';
import { type Quantity, constant } from '../../kernel/expression/quantity.ts';
import { materialEntries } from '../catalogue.ts';
import type { Flow } from '../components.ts';
import { type Sheet, fraction } from '../sheet.ts';
import { inboundFreight } from './inbound-freight.ts';
import { foreignCurrency, netPrice } from './net-price.ts';
import type { PriceTier } from './price-tiers.ts';
import { metricTonneOf, metricWorth, tonneOf } from './price-unit.ts';
import { moistureLimitOf, payableShare, usableShare } from './settlement.ts';

/** What a bone-dry tonne of a bought material costs. Money in the case's currency. */
export interface Purchase {
  readonly moisture: Quantity;
  /** Mass as received per bone-dry tonne, t-ar/bdt. */
  readonly received: Quantity;
  /** Ex-works money per bone-dry tonne. */
  readonly price: Quantity;
  /** Inbound freight and handling per bone-dry tonne. */
  readonly freight: Quantity;
  /** The input that sets each. */
  readonly priceInput: string;
  /** Prices by tonnage; none where one price holds for all of it. */
  readonly tiers: readonly PriceTier[];
  /** Symbol of the tonne that the price is per, and its currency per such a tonne. */
  readonly basis: string;
  readonly priceUnit: string;
  /** Tonnes on that basis per bone-dry tonne, as they count towards the tiers. */
  readonly tonnesPerDry: Quantity;
  /** Ex-works money per bone-dry tonne at another price than the one in force. */
  readonly costAt: (price: Quantity) => Quantity;
  readonly freightInput: string;
}

const mostlyDry = { least: '0', below: '100' } as const;

export function purchaseOf(sheet: Sheet, material: Material, composition: Flow): Purchase {
  const id = `material.${material.id}`;
  const where = material.label;
  const entry = material.like === undefined ? undefined : materialEntries.get(material.like);
  const moisture = sheet.input({
    id: `${id}.moisture`,
    label: 'Moisture as received',
    where,
    unit: '1',
    entry: '%',
    figure: entry?.moisture,
    allowed: mostlyDry,
  });
  const received = sheet.define(
    `${id}.received`,
    'Mass as received per bone-dry tonne',
    't-ar/bdt',
    constant('1', 't-ar/bdt').dividedBy(moisture.complement()),
    { where },
  );
  const { net, tiers, netOf, unit: priceUnit } = netPrice(sheet, material);
  // Only looked at to warn: a delivery above it is refused, whatever it would cost.
  sheet.optional({
    id: `${id}.moistureRefusal`,
    label: 'Moisture at which deliveries are refused',
    where,
    unit: '1',
    entry: '%',
    allowed: fraction,
  });
  const payable = payableMass(sheet, material, { net, moisture, received, composition });
  const foreign = foreignCurrency(sheet, material);
  const rate = foreign === null ? constant('1') : exchangeRate(sheet, foreign);
  const costAt = (asked: Quantity): Quantity => perMetricTonne(material, netOf(asked)).times(payable).times(rate);
  const price = sheet.define(
    `${id}.cost`,
    'Paid per bone-dry tonne',
    'EUR/bdt',
    perMetricTonne(material, net).times(payable).times(rate),
    {
      where,
      note: 'Net price times the payable tonnes per bone-dry tonne.',
    },
  );
  const { freight, freightInput } = inboundFreight(sheet, material, received);
  const basis = metricTonneOf(material.price);
  const tonnesPerDry = tonnesPerDryOf(material, received);
  const inputs = { priceInput: `${id}.price`, freightInput };
  return { moisture, received, price, freight, ...inputs, tiers, basis, priceUnit, tonnesPerDry, costAt };
}

/** Tonnages of tiers are delivered tonnes: deductions for moisture lower what is paid, not what was taken. */
function tonnesPerDryOf({ price }: Material, received: Quantity): Quantity {
  if (price.basis === 'as received') return received;
  return price.basis === 'air-dry' ? constant('1', 'adt/bdt').dividedBy(constant('0.9')) : constant('1');
}

/** Payable mass is metric; a price per short or long ton is brought to it by the definition of that ton. */
function perMetricTonne({ price }: Material, net: Quantity): Quantity {
  const worth = metricWorth(price);
  return worth === null ? net : net.dividedBy(constant(worth, `${metricTonneOf(price)}/${tonneOf(price)}`));
}

interface Delivered {
  readonly net: Quantity;
  readonly moisture: Quantity;
  readonly received: Quantity;
  readonly composition: Flow;
}

/** Payable tonnes per bone-dry tonne, on the basis of the price. */
function payableMass(sheet: Sheet, material: Material, { net, moisture, received, composition }: Delivered): Quantity {
  const unit = `${metricTonneOf(material.price)}/bdt`;
  const define = (quantity: Quantity, note: string): Quantity =>
    sheet.define(`material.${material.id}.payable`, 'Payable tonnes per bone-dry tonne', unit, quantity, {
      where: material.label,
      note,
    });
  const { basis } = material.price;
  // One air-dry tonne is 90 % dry, by definition of the trade.
  if (basis === 'air-dry')
    return define(constant('1', 'adt/bdt').dividedBy(constant('0.9')), 'An air-dry tonne is 90 % dry.');
  if (basis === 'bone-dry') return define(constant('1'), 'The price is per bone-dry tonne.');
  const limit = moistureLimitOf(sheet, material);
  const wet = limit === null ? constant('1') : payableShare(material.settlement, moisture, limit);
  const share = wet.times(usableShare(sheet, material, composition));
  if (share.operation.op === 'constant') return define(received, 'Paid as weighed.');
  // A fee that is received for taking paper is settled as weighed.
  return define(
    net.whenAbove(constant('0', net.unit), received.times(share), received),
    settlementNotes[material.settlement],
  );
}

const settlementNotes = {
  'as weighed': 'Paid as weighed, less unusable material above what was agreed.',
  'dry basis': 'Excess moisture is settled on the dry basis.',
  'point for point': 'Excess moisture is settled point for point.',
} as const;

/** Case money per unit of a foreign currency. There is no default: a rate is a fact of one day. */
function exchangeRate(sheet: Sheet, currency: string): Quantity {
  const own = sheet.case.currency;
  return sheet.input({
    id: `rate.${currency}`,
    label: `Rate of exchange, ${own} per ${currency}`,
    unit: `${own}/${currency}`,
    foreign: true,
    allowed: { above: '0' },
  });
}
