import { npvId, type Spread } from '../../../../src/index.ts';
import type { NumberStyle } from '../../../numbers/number-style.ts';
import type { ResultUnderTest } from '../../../session/what-if-place.svelte.ts';

/** What a result under test is called, how it is counted, and what its two signs say. */
export interface ResultWords {
  /** What kind of figure it is, inside a sentence. */
  readonly kind: 'difference' | 'present value';
  /** "€/t"; beside a figure. */
  readonly unit: string;
  readonly decimals: number;
  /** How much of the result's own unit one of `unit` is. */
  readonly scale: number;
  /** A plus stands before differences only. */
  readonly sign: boolean;
  /** Whether the route compared wins below nothing, as it does by every difference; by a present value it wins above. */
  readonly winsBelow: boolean;
  /** "recovered cheaper". */
  readonly withWins: string;
  /** "virgin cheaper". */
  readonly baseWins: string;
  /** At nothing: "both cost the same". */
  readonly neither: string;
}

export const resultNames: Readonly<Record<ResultUnderTest, string>> = {
  'difference.total': 'Cost per tonne',
  'difference.withoutPolicy': 'Cost without policy',
  'difference.footprint.total': 'Carbon per tonne',
  [npvId]: 'Present value',
};

const million = 1e6;

// A difference is the route compared less the base.
const difference = { kind: 'difference', scale: 1, sign: true, winsBelow: true } as const;

/** The words of a result. The plan of a present value is to change from the base to the route compared. */
export function resultWords(result: string, spread: Spread, numbers: NumberStyle): ResultWords {
  const { base, other } = routeWords(spread);
  switch (result) {
    case npvId:
      return {
        kind: 'present value',
        unit: `${numbers.symbol} million`,
        decimals: 2,
        scale: million,
        sign: false,
        winsBelow: false,
        withWins: 'the plan pays',
        baseWins: 'the plan loses',
        neither: 'the plan pays nothing',
      };
    case 'difference.footprint.total':
      return {
        ...difference,
        unit: 'kg CO2e/t',
        decimals: 1,
        withWins: `${other} emits less`,
        baseWins: `${base} emits less`,
        neither: 'both emit the same',
      };
    default:
      return {
        ...difference,
        unit: `${numbers.symbol}/t`,
        decimals: 2,
        withWins: `${other} cheaper`,
        baseWins: `${base} cheaper`,
        neither: 'both cost the same',
      };
  }
}

/** "virgin" and "recovered" where that tells the routes apart, else their own names. */
export function routeWords(spread: Spread): { readonly base: string; readonly other: string } {
  return spread.base.kind === spread.with.kind
    ? { base: spread.base.label, other: spread.with.label }
    : { base: spread.base.kind, other: spread.with.kind };
}
