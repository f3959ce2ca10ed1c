import { roundedParts } from '../study/rounding.ts';
import type { Sensitivity } from '../study/sensitivity.ts';
import { formatNumber } from './number-format.ts';

/** On what a result rests, in whole per cent that add up: "measured 12 %, sourced 33 %, rule of thumb 55 %"; "" where nothing moves it. */
export function restsPhrase(
  { measured, sourced, 'rule of thumb': practice }: Sensitivity['rests'],
  locale: string,
): string {
  const shares = [measured, sourced, practice];
  if (!shares.every(Number.isFinite) || shares.every((share) => share === 0)) return '';
  const percents = roundedParts(
    shares.map((share) => String(share * 100)),
    0,
    '100',
  ).map((digits) => `${formatNumber(digits, { locale })}\u00a0%`);
  return ['measured', 'sourced', 'rule of thumb'].map((kind, place) => `${kind} ${percents[place] ?? ''}`).join(', ');
}
