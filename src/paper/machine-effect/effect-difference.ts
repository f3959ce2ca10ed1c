import type { Quantity } from '../../kernel/expression/quantity.ts';
import type { Sheet } from '../sheet.ts';
import { type EffectStep, effectCauses, effectId, machineViews } from './effect-ids.ts';

/** How the machine takes back what costs alone save: every step of both views, and the tonnes and hours by cause, `with` less `base`. */
export function writeEffectDifference(sheet: Sheet): void {
  const { currency, compare } = sheet.case;
  const less = (name: string, label: string, unit: 'EUR/a' | 't/a' | 'h/a'): void => {
    const of = (routeId: string): Quantity => sheet.graph.later(effectId(routeId, name), unit.replace('EUR', currency));
    sheet.define(effectId('difference', name), label, unit, of(compare.with).minus(of(compare.base)), {
      where: 'Difference',
    });
  };
  less('costsAlone', 'Difference before any machine effect, per year', 'EUR/a');
  for (const view of machineViews) {
    const words = view === 'soldOut' ? 'sold out' : 'orders limited';
    const step = (id: EffectStep, label: string): void => {
      less(`${view}.${id}`, `${label}, ${words}`, 'EUR/a');
    };
    for (const { id, label } of effectCauses) step(id, label);
    step('takenBack', 'What the machine takes back');
    step('left', 'Difference with the machine effect, per year');
  }
  less('tonnesFewer.slower', 'Tonnes lost to a slower machine', 't/a');
  less('tonnesFewer.breaks', 'Tonnes lost to breaks and washes', 't/a');
  less('tonnesFewer.heavier', 'Tonnes that a heavier sheet takes from what is sold', 't/a');
  less('soldOut.secondTonnes', 'Tonnes of second quality, sold out', 't/a');
  less('ordersLimited.secondTonnes', 'Tonnes of second quality, orders limited', 't/a');
  less('ordersLimited.tonnesMore', 'More tonnes to make for the same orders', 't/a');
  less('extraHours', 'Extra hours that the orders take', 'h/a');
  for (const { id, label } of effectCauses)
    if (id !== 'seconds') less(`extraHours.${id}`, `${label}, extra hours`, 'h/a');
}
