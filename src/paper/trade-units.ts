import type { SymbolWorth } from '../kernel/units/entry-unit.ts';

/**
 * Units that people write, and what they are worth in the units the model reckons in. A tonne always says which: t of product,
 * bdt bone-dry, adt air-dry (90 % dry), t-ar as received, wet-t of residue as hauled, gt gross at the reel.
 * By definition 1 short ton = 0.90718474 t and 1 long ton = 1.0160469088 t (international pound, 1959). Rounded: 1 hp = 0.745699872 kW,
 * 1 MMBtu = 1.05505585 GJ (International Table).
 */
const rows: readonly SymbolWorth[] = [
  { symbol: '%', worth: '0.01', of: '1' },
  { symbol: 'MWh', worth: '1000', of: 'kWh' },
  { symbol: 'hpd', worth: '17.896796928', of: 'kWh' },
  { symbol: 'hp', worth: '0.745699872', of: 'kW' },
  { symbol: 'MJ', worth: '0.001', of: 'GJ' },
  // Heat by the hour of power: kWh alone is electricity, which never turns into heat by itself.
  { symbol: 'MWh-heat', worth: '3.6', of: 'GJ' },
  { symbol: 'kWh-heat', worth: '0.0036', of: 'GJ' },
  { symbol: 'MMBtu', worth: '1.05505585', of: 'GJ' },
  { symbol: 'g', worth: '0.001', of: 'kg' },
  { symbol: 'tCO2e', worth: '1000', of: 'kgCO2e' },
  { symbol: 'l', worth: '0.001', of: 'm3' },
  { symbol: 'odt', worth: '1', of: 'bdt' },
  { symbol: 'bdst', worth: '0.90718474', of: 'bdt' },
  { symbol: 'bdlt', worth: '1.0160469088', of: 'bdt' },
  { symbol: 'adst', worth: '0.90718474', of: 'adt' },
  { symbol: 'adlt', worth: '1.0160469088', of: 'adt' },
  { symbol: 'st-ar', worth: '0.90718474', of: 't-ar' },
  { symbol: 'lt-ar', worth: '1.0160469088', of: 't-ar' },
  { symbol: 'wet-st', worth: '0.90718474', of: 'wet-t' },
  { symbol: 'st', worth: '0.90718474', of: 't' },
  { symbol: 'lt', worth: '1.0160469088', of: 't' },
  { symbol: 'wet-lt', worth: '1.0160469088', of: 'wet-t' },
  { symbol: 'glt', worth: '1.0160469088', of: 'gt' },
  { symbol: 'gst', worth: '0.90718474', of: 'gt' },
];

export const worths: ReadonlyMap<string, SymbolWorth> = new Map(rows.map((row) => [row.symbol, row]));

/** A bare "ton" is 907, 1000 or 1016 kg, depending on who says it: it is asked about, never guessed. */
export const ambiguousSymbols: ReadonlySet<string> = new Set(['ton', 'tons', 'Ton', 'Tons', 'TON', 'TONS']);

const spellings: readonly (readonly [RegExp, string])[] = [
  [/€/gu, 'EUR'],
  [/£/gu, 'GBP'],
  [/(US)?\$/gu, 'USD'],
  [/\s+per\s+/giu, '/'],
  [/\b([kM]Wh) (of )?heat\b/gu, '$1-heat'],
  [/\b(bone-dry|bd) short tons?\b/giu, 'bdst'],
  [/\b(bone-dry|bd) long tons?\b/giu, 'bdlt'],
  [/\b(air-dry|ad) short tons?\b/giu, 'adst'],
  [/\b(air-dry|ad) long tons?\b/giu, 'adlt'],
  [/\bshort tons? as received\b/giu, 'st-ar'],
  [/\blong tons? as received\b/giu, 'lt-ar'],
  [/\bwet short tons?\b/giu, 'wet-st'],
  [/\bwet long tons?\b/giu, 'wet-lt'],
  [/\bgross short tons?\b/giu, 'gst'],
  [/\bgross long tons?\b/giu, 'glt'],
  [/\bshort tons?\b/giu, 'st'],
  [/\blong tons?\b/giu, 'lt'],
  [/\bt(onnes?)? as received\b/giu, 't-ar'],
  [/\bwet t(onnes?)?\b/giu, 'wet-t'],
  [/\bgross t(onnes?)?\b/giu, 'gt'],
  [/\btonnes?\b/giu, 't'],
  [/\bm³ of wood\b/giu, 'm3-wood'],
  [/\bm³/gu, 'm3'],
  [/^per /giu, '1/'],
  [/\bkg CO2e?\b/giu, 'kgCO2e'],
  [/\bt CO2e\b/giu, 'tCO2e'],
  [/\bt CO2\b/giu, 'tCO2'],
  [/\bkg COD\b/giu, 'kgCOD'],
  [/\b(year|yr|y)\b/giu, 'a'],
  [/°C/gu, 'C'],
];

/** Brings a unit as written ("€/wet t") to the symbols of this program ("EUR/wet-t"). */
export function withTradeSymbols(text: string): string {
  return spellings.reduce((result, [pattern, symbol]) => result.replace(pattern, symbol), text.trim()) || '1';
}
