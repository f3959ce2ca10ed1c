import type { Lot, LotFigure } from '../../../src/index.ts';
import type { NumberStyle } from '../../numbers/number-style.ts';

interface TermGroup {
  readonly title: string;
  readonly fields: readonly { readonly field: LotFigure; readonly label: string; readonly unit: string }[];
}

export const basisChoices = [
  { value: 'as received', label: 'as received' },
  { value: 'air-dry', label: 'air-dry' },
  { value: 'bone-dry', label: 'bone-dry' },
];
export const settlementChoices = [
  { value: 'dry basis', label: 'on the dry basis' },
  { value: 'point for point', label: 'point for point' },
  { value: 'as weighed', label: 'paid as weighed' },
];
export const deliveryChoices = [
  { value: 'ex works', label: 'ex works, freight per tonne' },
  { value: 'ex works by distance', label: 'ex works, freight by distance' },
  { value: 'ex works by load', label: 'ex works, freight by load' },
  { value: 'delivered', label: 'delivered' },
];
export const remedyChoices = [
  { value: '', label: 'nothing is done' },
  { value: 'claim', label: 'claim for the excess' },
  { value: 'downgrade', label: 'downgrade' },
  { value: 'refuse', label: 'refuse the lot' },
];

/** The figures that a lot can have beside the few on the page; those of the freight by the way it is delivered. */
export function termGroups(lot: Lot, priceUnit: string, numbers: NumberStyle): readonly TermGroup[] {
  const money = numbers.unit(priceUnit).replace('/t as received', '/t');
  const { symbol } = numbers;
  const distance = { field: 'distance', label: 'Distance', unit: 'km' } as const;
  const freight: Readonly<Record<Lot['delivery'], TermGroup['fields']>> = {
    'ex works': [{ field: 'freight', label: 'Freight', unit: `${symbol}/t` }, distance],
    'ex works by distance': [distance, { field: 'freightRate', label: 'Rate', unit: `${symbol}/t km` }],
    'ex works by load': [
      { field: 'loadMoney', label: 'Of a load', unit: symbol },
      { field: 'backhaul', label: 'Load back bears', unit: '%' },
      { field: 'payload', label: 'Payload', unit: 't' },
      { field: 'volume', label: 'Volume', unit: 'm³' },
      { field: 'baleDensity', label: 'Bale density', unit: 't/m³' },
      distance,
    ],
    delivered: [distance],
  };
  return [
    { title: 'Freight', fields: freight[lot.delivery] },
    {
      title: 'Settlement',
      fields: [
        { field: 'moistureLimit', label: 'Moisture agreed', unit: '%' },
        { field: 'moistureTolerance', label: 'Tolerance above', unit: 'points' },
        { field: 'unusableLimit', label: 'Unusable agreed', unit: '%' },
        { field: 'downgradePrice', label: 'Lower grade’s price', unit: money },
        { field: 'paymentDays', label: 'Paid after', unit: 'days' },
      ],
    },
    {
      title: 'Found in it, % of dry mass',
      fields: [
        { field: 'lights', label: 'Film and foam', unit: '%' },
        { field: 'heavies', label: 'Sand, glass, metal', unit: '%' },
        { field: 'wire', label: 'Bale wire', unit: '%' },
        { field: 'wetStrength', label: 'Wet-strength', unit: '%' },
        { field: 'ash', label: 'Ash', unit: '%' },
      ],
    },
    {
      title: 'Contract: index × times + plus, in its bounds',
      fields: [
        { field: 'index', label: 'Index', unit: money },
        { field: 'slope', label: 'Times', unit: '' },
        { field: 'constant', label: 'Plus', unit: money },
        { field: 'floor', label: 'Floor', unit: money },
        { field: 'cap', label: 'Cap', unit: money },
        { field: 'rebate', label: 'Less rebate', unit: money },
      ],
    },
  ];
}
