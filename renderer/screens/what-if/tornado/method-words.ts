import type { Sensitivity } from '../../../../src/index.ts';
import { formatNumber } from '../../../../src/wording/number-format.ts';

type Method = Pick<Sensitivity, 'method' | 'share'>;

/** How far inputs were moved, as it stands on the picture. */
export function methodWords(asked: Method, locale: string): string {
  return asked.method === 'usual range'
    ? 'one at a time over its usual range'
    : `one at a time, each ±${percentWords(asked.share, locale)}`;
}

/** A share as people read it: "20 %", with a space that does not break. */
export function percentWords(share: number, locale: string): string {
  return `${formatNumber(Number((share * 100).toPrecision(12)), { locale })}\u00a0%`;
}
