import { formatNumber } from '../../../src/wording/number-format.ts';

/** Below this many kilograms in a thousand something is a trace: listed on demand, and too thin to draw. */
export const trace = 0.05;
// A gram in a tonne: what is less is said to be less, and its working has every digit.
const least = 0.001;

/** Dry kilograms in a thousand: "689.5", "13.05", and two figures of a trace. */
export function massText(mass: number, locale: string): string {
  if (Number.isNaN(mass)) return '';
  if (mass !== 0 && Math.abs(mass) < least) return `under ${formatNumber(least, { locale, significant: 1 })}`;
  if (mass !== 0 && Math.abs(mass) < trace) return formatNumber(mass, { locale, significant: 2 });
  return formatNumber(mass, { locale, decimals: Math.abs(mass) >= 100 ? 1 : 2 });
}

/** A fraction as a percentage, without its sign: "92.12". */
export function percentText(fraction: number, locale: string): string {
  return Number.isNaN(fraction) ? '' : formatNumber(fraction * 100, { locale, decimals: 2 });
}
