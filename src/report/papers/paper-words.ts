import { formatNumber } from '../../wording/number-format.ts';

/** "€55.94", "−55,94 €": money as the locale writes it, with a true minus. "not yet" where there is none. */
export function moneyText(value: number, currency: string, locale: string, decimals = 2): string {
  if (!Number.isFinite(value)) return 'not yet';
  const digits = { minimumFractionDigits: decimals, maximumFractionDigits: decimals };
  const style = {
    style: 'currency',
    currency,
    currencyDisplay: 'narrowSymbol',
    numberingSystem: 'latn',
    ...digits,
  } as const;
  return new Intl.NumberFormat(locale, style).format(value).replace(/-/gu, '\u2212');
}

/** "€", or the code where the currency has no symbol in the locale. */
export function currencySymbol(currency: string, locale: string): string {
  const parts = new Intl.NumberFormat(locale, {
    style: 'currency',
    currency,
    currencyDisplay: 'narrowSymbol',
  }).formatToParts(0);
  return parts.find(({ type }) => type === 'currency')?.value ?? currency;
}

/** "25 November 2026" of "2026-11-25". */
export function dateText(date: string, locale: string): string {
  const day = new Date(`${date}T00:00:00Z`);
  return new Intl.DateTimeFormat(locale, { dateStyle: 'long', timeZone: 'UTC' }).format(day);
}

/** As many digits as an estimate has meaning. */
export function significantText(value: number | string, locale: string, significant = 4): string {
  return value === '' ? 'not yet' : formatNumber(value, { locale, significant });
}

/** "a, b and c". */
export function listText(words: readonly string[]): string {
  return words.length < 3 ? words.join(' and ') : `${words.slice(0, -1).join(', ')} and ${words.at(-1) ?? ''}`;
}
