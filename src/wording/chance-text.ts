import { formatNumber } from './number-format.ts';

/** A chance in whole numbers of 100; what only rounds to all or none of them is not told as such. */
export function chanceText(share: number, locale: string): string {
  if (share > 0.995 && share < 1) return 'more than 99';
  if (share > 0 && share < 0.005) return 'less than 1';
  return formatNumber(share * 100, { locale, decimals: 0 });
}
