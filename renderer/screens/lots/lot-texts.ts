import { formatNumber } from '../../../src/wording/number-format.ts';
import type { NumberStyle } from '../../numbers/number-style.ts';

/** A price or a cost in this person's figures; "not yet" where it is not known. */
export function priceText(value: number, { locale }: NumberStyle, decimals = 2): string {
  return formatNumber(value, { locale, decimals });
}

/** A difference, with its sign. */
export function differenceText(value: number, { locale }: NumberStyle): string {
  return formatNumber(value, { locale, decimals: 2, sign: true });
}

/** A share with one decimal. */
export function shareText(value: number, { locale }: NumberStyle): string {
  return formatNumber(value, { locale, decimals: 1 });
}
