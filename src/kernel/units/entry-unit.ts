import { Decimal } from '../evaluate/decimal-settings.ts';
import { type Unit, parseUnit } from './unit.ts';

/** What one symbol is worth in another: "MJ" is 0.001 "GJ". Digits are text, so that the decimal reading stays exact. */
export interface SymbolWorth {
  readonly symbol: string;
  readonly worth: string;
  readonly of: string;
}

// Far more digits than the reckoning keeps: a factor such as 17.896796928/0.90718474 never ends, and cut at 34 digits it would turn
// 0.90718474 hpd/bdst into 17.8967...0001 kWh/bdt.
const Long = Decimal.clone({ precision: 80 });

/** The number that turns a figure typed in `entered` into `wanted`, as digits; null where the two are not the same kind of thing. */
export function entryFactor(entered: Unit, wanted: Unit, worths: ReadonlyMap<string, SymbolWorth>): string | null {
  const from = inBaseSymbols(entered, worths);
  const to = inBaseSymbols(wanted, worths);
  if (from.unit !== to.unit) return null;
  return from.factor.dividedBy(to.factor).toString();
}

function inBaseSymbols(unit: Unit, worths: ReadonlyMap<string, SymbolWorth>): { unit: string; factor: Decimal } {
  let factor = new Long(1);
  const parts: string[] = [];
  for (const [symbol, power] of unit.exponents) {
    const worth = worths.get(symbol);
    factor = worth === undefined ? factor : factor.times(new Long(worth.worth).pow(power));
    const base = worth === undefined ? symbol : worth.of;
    if (base !== '1') parts.push(`${base}^${String(power)}`);
  }
  return { unit: parts.length === 0 ? '1' : parseUnit(parts.join('*')).text, factor };
}
