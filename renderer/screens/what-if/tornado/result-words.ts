import type { Spread } from '../../../../src/index.ts';
import type { NumberStyle } from '../../../numbers/number-style.ts';
import type { ResultUnderTest } from '../../../session/what-if-place.svelte.ts';

/** What a result under test is called, how it is counted, and what its two signs say. */
export interface ResultWords {
  /** "€/t"; beside a figure. */
  readonly unit: string;
  readonly decimals: number;
  /** Below nothing: "recovered cheaper". */
  readonly withWins: string;
  /** Above nothing: "virgin cheaper". */
  readonly baseWins: string;
  /** At nothing: "both cost the same". */
  readonly neither: string;
}

export const resultNames: Readonly<Record<ResultUnderTest, string>> = {
  'difference.total': 'Cost per tonne',
  'difference.withoutPolicy': 'Cost without policy',
  'difference.footprint.total': 'Carbon per tonne',
};

/** Differences are the route compared less the base: below nothing the route compared wins. */
export function resultWords(result: string, spread: Spread, numbers: NumberStyle): ResultWords {
  const { base, other } = routeWords(spread);
  return result === 'difference.footprint.total'
    ? {
        unit: 'kg CO2e/t',
        decimals: 1,
        withWins: `${other} emits less`,
        baseWins: `${base} emits less`,
        neither: 'both emit the same',
      }
    : {
        unit: `${numbers.symbol}/t`,
        decimals: 2,
        withWins: `${other} cheaper`,
        baseWins: `${base} cheaper`,
        neither: 'both cost the same',
      };
}

/** "virgin" and "recovered" where that tells the routes apart, else their own names. */
export function routeWords(spread: Spread): { readonly base: string; readonly other: string } {
  return spread.base.kind === spread.with.kind
    ? { base: spread.base.label, other: spread.with.label }
    : { base: spread.base.kind, other: spread.with.kind };
}
