import { capitalLine } from './capital.ts';
import { type Figure, plainFigure } from './figure.ts';
import type { Plant } from './plant.ts';
import { type Sheet, notNegative } from './sheet.ts';
import type { LineSpec } from './statement-writer.ts';

const noneEntered = (unit: string): Figure => plainFigure('0', '0', '0', unit, 'none', 'none entered');
const perUnit = { 'per tonne': 'EUR/t', 'per hour': 'EUR/h', 'per year': 'EUR/a' } as const;

/** People, maintenance, the machine's own fixed cost, the product's price difference, the user's own charges, and capital. */
export function fixedLines(sheet: Sheet, plant: Plant): readonly LineSpec[] {
  const { route } = plant;
  const { service } = plant.machine;
  const where = route.label;
  const yearly = (id: string, label: string, at?: string) =>
    sheet.input({ id, label, where: at, unit: 'EUR/a', figure: noneEntered('EUR/a'), allowed: notNegative });
  const premiumId = `${route.id}.priceDifference`;
  const premium = sheet.input({
    id: premiumId,
    label: 'Product price above the reference',
    where,
    unit: 'EUR/t',
    figure: noneEntered('EUR/t'),
  });
  const zero = sheet.constant('0', 'EUR/t');
  return [
    {
      account: 'labour',
      key: 'labour',
      label: 'Preparation labour',
      amount: yearly(`${route.id}.labour`, 'Preparation labour', where),
      behaviour: 'per year',
      driverId: `${route.id}.labour`,
    },
    {
      account: 'maintenance',
      key: 'maintenance',
      label: 'Maintenance',
      amount: yearly(`${route.id}.maintenance`, 'Maintenance', where),
      behaviour: 'per year',
      driverId: `${route.id}.maintenance`,
    },
    {
      account: 'machineFixed',
      key: 'machineFixed',
      label: 'Machine fixed cost',
      amount: yearly('machine.fixed', 'Machine fixed cost'),
      behaviour: 'per year',
      avoidable: false,
      driverId: 'machine.fixed',
    },
    {
      account: 'productPrice',
      key: 'productPrice',
      label: 'Product price difference',
      amount: zero.minus(premium),
      driverId: premiumId,
      note: 'A product that sells for more is a credit, one that sells for less a cost. It is for the reference tonne, which is what sells.',
    },
    ...route.charges.map((charge): LineSpec => {
      const id = `${route.id}.charge.${charge.id}`;
      const unit = perUnit[charge.behaviour];
      const amount = sheet.input({ id, label: charge.label, where, unit });
      return {
        account: 'charges',
        key: charge.id,
        label: charge.label,
        amount: charge.behaviour === 'per tonne' ? amount.times(service) : amount,
        behaviour: charge.behaviour,
        avoidable: charge.avoidable,
        nature: charge.nature,
        driverId: id,
      };
    }),
    ...(route.capital === 'annual charge' ? capitalLine(sheet, plant) : []),
  ];
}
