import type { Route } from '../case/case.ts';
import { type Quantity, constant, total } from '../kernel/expression/quantity.ts';
import { plainFigure } from './figure.ts';
import type { Plant } from './plant.ts';
import { type InputSpec, type Sheet } from './sheet.ts';
import type { LineSpec } from './statement-writer.ts';
import { usedMaterials } from './used-materials.ts';

type Kind = 'stock' | 'owed';

const words = {
  stock: { days: 'stockDays', label: 'Days of use in the yard', total: 'Value of fibre in the yard' },
  owed: { days: 'creditDays', label: 'Days until the supplier is paid', total: 'Owed to suppliers of fibre' },
} as const;

const daysSpec = (material: string, where: string, kind: Kind): InputSpec => ({
  id: `material.${material}.${words[kind].days}`,
  label: words[kind].label,
  where,
  unit: 'd',
  allowed: { least: '0', most: '365' },
});

/** Whether a stock of days was given for this material itself. */
export const hasOwnStockDays = (sheet: Sheet, material: string): boolean =>
  sheet.isGiven(daysSpec(material, '', 'stock').id);

/** Whether any material of the route has days of this kind. */
export function tiesUp(sheet: Sheet, route: Route, kind: Kind): boolean {
  return usedMaterials(sheet, route).some(({ id }) => sheet.isGiven(daysSpec(id, '', kind).id));
}

export const tiedUpIdOf = (routeId: string, kind: Kind): string => `${routeId}.capital.${kind}`;

/**
 * Money that lies in the yard as bales and pulp, and money that suppliers leave with the mill until they are paid: yearly cost ex works x
 * days/365 x rate. Fibre that a fee is received for ties up nothing. The routes of an investment plan have it there, as working capital.
 */
export function tiedUpLines(sheet: Sheet, plant: Plant): readonly LineSpec[] {
  const { route, mill } = plant;
  const [stock, owed] = [tiedUp(sheet, plant, 'stock'), tiedUp(sheet, plant, 'owed')];
  if (stock === null && owed === null) return [];
  const rate = sheet
    .input({
      id: 'capital.tiedUpRate',
      label: 'Rate on money tied up in stock or owed to suppliers',
      unit: '1',
      figure: plainFigure('6', '3', '10', '%'),
      allowed: { least: '0', most: '100' },
    })
    .times(constant('1', '1/a'));
  // The rate is asked for all the same, so that a plan that is given up finds it again.
  const plan = sheet.case.investment;
  if (plan !== undefined && (plan.from === route.id || plan.to === route.id)) return [];
  const line = (kind: Kind, label: string, yearly: (money: Quantity) => Quantity, money: Quantity | null) =>
    money === null
      ? []
      : [
          {
            account: 'capital',
            key: kind,
            label,
            amount: yearly(money.times(rate)).dividedBy(mill.tonnes),
            driverId: tiedUpIdOf(route.id, kind),
            note: 'Money tied up times the rate on it.',
          } as const,
        ];
  return [
    ...line('stock', 'Fibre held in the yard', (money) => money, stock),
    ...line('owed', 'Payment days of suppliers', (money) => constant('0', money.unit).minus(money), owed),
  ];
}

/** Over all materials that days were given for; null where none were. */
function tiedUp(sheet: Sheet, { route }: Plant, kind: Kind): Quantity | null {
  const perYear = `${sheet.case.currency}/a`;
  const parts = usedMaterials(sheet, route).flatMap(({ id, label }) => {
    const spec = daysSpec(id, label, kind);
    if (!sheet.has(spec)) return [];
    const cost = sheet.graph.later(`${route.id}.costPerYear.fibre.${id}`, perYear).greaterOf(constant('0', perYear));
    return [cost.times(sheet.input(spec)).dividedBy(constant('365', 'd/a'))];
  });
  if (parts.length === 0) return null;
  return sheet.define(tiedUpIdOf(route.id, kind), words[kind].total, 'EUR', total(parts, sheet.case.currency), {
    where: route.label,
    note: 'Yearly cost ex works times days over 365, for each material that days were given for.',
  });
}
