import { parseUnit } from '../kernel/units/unit.ts';

/** Symbols of the model as people read them. What is not listed stands as it is. What is shown can be typed. */
const readable: Readonly<Record<string, string>> = {
  EUR: '€',
  GBP: '£',
  't-ar': 't as received',
  'wet-t': 'wet t',
  gt: 'gross t',
  m3: 'm³',
  'm3-wood': 'm³ of wood',
  C: '°C',
  a: 'year',
  kgCO2e: 'kg CO2e',
  tCO2e: 't CO2e',
  tCO2: 't CO2',
  kgCOD: 'kg COD',
};

/** "EUR/t-ar" as "€/t as received"; "" for a plain number. */
export function unitLabel(unit: string): string {
  if (unit === '1') return '';
  const above: string[] = [];
  const below: string[] = [];
  for (const [symbol, power] of parseUnit(unit).exponents) {
    const label = readable[symbol] ?? symbol;
    const raised = Math.abs(power) === 1 ? label : `${label}^${String(Math.abs(power))}`;
    (power > 0 ? above : below).push(raised);
  }
  if (above.length === 0) return `per ${below.join(' and ')}`;
  return [above.join(' '), ...below].join('/');
}
