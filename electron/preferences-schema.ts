import * as v from 'valibot';
import type { Preferences } from './preferences.ts';

function isLocale(tag: string): boolean {
  try {
    return Intl.NumberFormat.supportedLocalesOf(tag).length === 1;
  } catch {
    return false;
  }
}

export const leastZoom = 50;
export const mostZoom = 200;

export const preferencesSchema = v.strictObject({
  numberLocale: v.nullable(v.pipe(v.string(), v.maxLength(40), v.check(isLocale))),
  theme: v.picklist(['system', 'light', 'dark', 'contrast']),
  currencyText: v.picklist(['symbol', 'code']),
  zoom: v.pipe(v.number(), v.integer(), v.minValue(leastZoom), v.maxValue(mostZoom)),
}) satisfies v.GenericSchema<unknown, Preferences>;
