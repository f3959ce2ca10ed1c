import { formatNumber } from '../../../../src/wording/number-format.ts';

const manyDigits = 1000;
const digitsKept = 4;

/** A figure of an input on a picture: whole from a thousand on, else to four digits. The table under it holds the same. */
export function inputFigure(value: number, locale: string): string {
  return Math.abs(value) >= manyDigits
    ? formatNumber(value, { locale, decimals: 0 })
    : formatNumber(value, { locale, significant: digitsKept });
}
