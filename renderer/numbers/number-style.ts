import { formatNumber } from '../../src/wording/number-format.ts';
import { unitLabel } from '../../src/wording/unit-label.ts';

// Figures of a working carry enough digits to be checked, and no more; the full value stands below them.
const workingDigits = 6;
const driverDigits = 3;
// As many decimals as the formatter can be told to fix.
const mostDecimals = 20;
const numberInText = /(?<![\p{L}\d.])(?:\d{1,3}(?:,\d{3})+|\d+)(?:\.\d+)?(?![\p{L}\d])/gu;

/** How figures are written for this person and this case: separators of the locale, money in the case's currency. */
export class NumberStyle {
  readonly locale: string;
  readonly currency: string;
  /** "€", or the code where the currency has no symbol of its own. */
  readonly symbol: string;
  readonly decimalMark: string;

  readonly #currencyText: 'symbol' | 'code';

  constructor(locale: string, currency: string, currencyText: 'symbol' | 'code' = 'symbol') {
    this.locale = locale;
    this.currency = currency;
    this.#currencyText = currencyText;
    this.symbol = currencyText === 'code' ? currency : currencySymbol(locale, currency);
    this.decimalMark =
      new Intl.NumberFormat(locale).formatToParts(0.5).find(({ type }) => type === 'decimal')?.value ?? '.';
  }

  /** Plain digits as they are, with this locale's separators; nothing stays nothing. */
  digits(plain: string): string {
    return plain === '' ? '' : formatNumber(plain, { locale: this.locale, ...decimalsOf(plain) });
  }

  /** Plain digits as one types them: without grouping, so that a comma typed between them can only be meant. */
  typing(plain: string): string {
    return plain.replace('.', this.decimalMark).replace('-', '\u2212');
  }

  difference(plain: string): string {
    return plain === '' ? '' : formatNumber(plain, { locale: this.locale, ...decimalsOf(plain), sign: true });
  }

  magnitude(plain: string): string {
    return this.digits(plain.replace('-', ''));
  }

  /** A result that drives a line: "33", "0.0993". */
  driver(value: number): string {
    const whole = Math.abs(value) >= 100;
    return formatNumber(value, { locale: this.locale, ...(whole ? { decimals: 0 } : { significant: driverDigits }) });
  }

  /** A result in a working: money of a tonne or a year in cents, everything else to six digits. */
  result(value: number, unit: string): string {
    const isMoney = unit === `${this.currency}/t` || unit === `${this.currency}/a` || unit === this.currency;
    return formatNumber(value, {
      locale: this.locale,
      ...(isMoney ? { decimals: 2 } : { significant: workingDigits }),
    });
  }

  /** Numbers inside an equation, which the engine writes as "1,042.852", written for this locale. */
  equation(text: string): string {
    return text.replace(numberInText, (number) => this.digits(number.replaceAll(',', '')));
  }

  unit(unit: string): string {
    const label = unitLabel(unit);
    // Currencies whose signs the labels of units use.
    return this.#currencyText === 'code' ? label.replaceAll('€', 'EUR').replaceAll('£', 'GBP') : label;
  }
}

/** Zeros at the end are part of a figure: "13.10" is not written as "13.1". Figures with more decimals are written in full as they are. */
function decimalsOf(plain: string): { readonly decimals?: number } {
  const match = /^-?\d+(?:\.(\d+))?$/u.exec(plain);
  const decimals = match?.[1]?.length ?? 0;
  return match === null || decimals > mostDecimals ? {} : { decimals };
}

function currencySymbol(locale: string, currency: string): string {
  const parts = new Intl.NumberFormat(locale, { style: 'currency', currency, currencyDisplay: 'narrowSymbol' });
  return parts.formatToParts(0).find(({ type }) => type === 'currency')?.value ?? currency;
}
