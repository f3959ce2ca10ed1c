import type { Blend } from '../../../case/lots.ts';
import type { PricedLot } from '../priced-lot.ts';

/** What a blend must keep. */
export type BlendLimitName =
  | { readonly kind: 'ash' }
  | { readonly kind: 'macro-stickies' }
  | { readonly kind: 'moisture' }
  | { readonly kind: 'grade'; readonly code: string; readonly end: 'least' | 'most' }
  | { readonly kind: 'available'; readonly lot: string };

/**
 * A limit over the stock that each lot brings to a tonne of product, as shares of the stock of the line: it is kept where `excess`, a sum over the
 * lots, is not above zero.
 */
export interface BlendLimit {
  readonly name: BlendLimitName;
  /** The value that must be kept, in the unit of `reached`: per cent, kg/t, or tonnes. */
  readonly wanted: number;
  /** For each lot, what a whole line of it has above the limit, in any unit. */
  readonly excess: readonly number[];
  /** The value that a blend of such shares of the stock comes to. */
  readonly reached: (shares: readonly number[]) => number;
}

/** Everything that a blend of these lots must keep. Each lot's figures are those of a line that is fed it alone. */
export function blendLimits(blend: Blend, lots: readonly PricedLot[]): readonly BlendLimit[] {
  const feeds = lots.map(({ values }) => values.feed);
  const received = lots.map(({ values }) => values.feed * values.received);
  const water = lots.map(({ moisture }) => moisture.mean);
  const product = Number(blend.product ?? NaN);
  return [
    ...most(
      { kind: 'ash' },
      blend.ash,
      lots.map(({ values }) => 100 * values.ash),
      ones(lots),
    ),
    ...most(
      { kind: 'macro-stickies' },
      blend.macroStickies,
      lots.map(({ values }) => values.macroStickies),
      ones(lots),
    ),
    ...most({ kind: 'moisture' }, blend.moisture, water, received),
    ...Object.entries(blend.grades ?? {}).flatMap(([code, ends]) => {
      const isOf = lots.map((lot) => (lot.lot.grade === code ? 100 : 0));
      return [
        ...most({ kind: 'grade', code, end: 'most' }, ends.most, isOf, feeds),
        ...least({ kind: 'grade', code, end: 'least' }, ends.least, isOf, feeds),
      ];
    }),
    ...lots.flatMap(({ lot }, place) => available(lot.id, Number(lot.figures.tonnes ?? NaN), product, received, place)),
  ];
}

function ones(lots: readonly unknown[]): readonly number[] {
  return lots.map(() => 1);
}

/** A mean of the lots' values, weighed, that must not be above what is given. */
function most(
  name: BlendLimitName,
  given: string | undefined,
  values: readonly number[],
  weights: readonly number[],
): readonly BlendLimit[] {
  if (given === undefined) return [];
  const wanted = Number(given);
  const excess = values.map((value, place) => (value - wanted) * weights[place]!);
  return [{ name, wanted, excess, reached: (shares) => meanOf(values, weights, shares) }];
}

function least(
  name: BlendLimitName,
  given: string | undefined,
  values: readonly number[],
  weights: readonly number[],
): readonly BlendLimit[] {
  return most(name, given, values, weights).map((limit) => ({ ...limit, excess: limit.excess.map((each) => -each) }));
}

function meanOf(values: readonly number[], weights: readonly number[], shares: readonly number[]): number {
  const sum = (of: (place: number) => number): number =>
    shares.reduce((all, share, place) => all + share * of(place), 0);
  return sum((place) => values[place]! * weights[place]!) / sum((place) => weights[place]!);
}

/** Tonnes of a lot as received that the product takes, no more than are on offer. Nothing is asked where either is not known. */
function available(
  lot: string,
  tonnes: number,
  product: number,
  received: readonly number[],
  place: number,
): readonly BlendLimit[] {
  if (Number.isNaN(tonnes) || Number.isNaN(product)) return [];
  const taken = received[place]! * product;
  return [
    {
      name: { kind: 'available', lot },
      wanted: tonnes,
      // Shares add up to one, so that the whole limit may be taken off each of them.
      excess: received.map((_, at) => (at === place ? taken : 0) - tonnes),
      reached: (shares) => shares[place]! * taken,
    },
  ];
}
