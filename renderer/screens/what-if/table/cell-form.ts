import { formatNumber } from '../../../../src/wording/number-format.ts';

/** Decimals that the numbers in cells are worth: whole ones where the table spans tens, more where it spans little. */
function cellDecimals(largest: number): number {
  if (largest >= 10 || largest === 0) return 0;
  return largest >= 1 ? 1 : 2;
}

/** `sign` writes a plus before what is above nothing. */
export function cellText(value: number, largest: number, locale: string, sign: boolean): string {
  return formatNumber(value, { locale, decimals: cellDecimals(largest), sign });
}
