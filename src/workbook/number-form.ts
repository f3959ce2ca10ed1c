import type { Unit } from '../kernel/units/unit.ts';
import type { NumberForm } from './plan.ts';

/** How numbers of a unit are shown: money to the cent, money a year whole, a share read in per cent as one, the rest to four decimals. */
export function numberForm(unit: Unit, shownIn: string | undefined, currency: string): NumberForm {
  if (shownIn === '%') return 'share';
  // Tonnes, hours and the like of a whole year.
  if (['t/a', 'h/a'].includes(unit.text)) return 'whole money';
  if (unit.exponents.get(currency) !== 1) return 'quantity';
  return unit.exponents.size === 1 || unit.exponents.get('a') === -1 ? 'whole money' : 'money';
}
