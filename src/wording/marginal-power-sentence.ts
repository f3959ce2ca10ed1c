import type { MarginalPower } from '../study/marginal-power.ts';
import { formatNumber } from './number-format.ts';

/** What the difference comes to with its electricity at the marginal price, and that it takes the place of the average. */
export function marginalPowerSentence(
  { use, price, average, perTonne, perYear }: MarginalPower,
  names: { readonly base: string; readonly with: string; readonly currency: string },
  locale: string,
): string {
  const number = (value: number, form: { readonly decimals?: number; readonly significant?: number }): string =>
    formatNumber(Math.abs(value), { locale, ...form });
  const power = `${number(use, { decimals: 0 })} kWh a tonne that ${names.with} takes ${use < 0 ? 'less' : 'more'}`;
  const prices = `${number(price, { significant: 4 })} ${names.currency}/kWh in place of the average of ${number(average, { significant: 4 })}`;
  const costs = `it costs ${number(perTonne, { decimals: 2 })} ${names.currency} a tonne ${perTonne < 0 ? 'less' : 'more'} than ${names.base}`;
  return `With the ${power} at the marginal price, ${prices}, ${costs}: ${number(perYear / 1e6, { decimals: 2 })} million a year.`;
}
