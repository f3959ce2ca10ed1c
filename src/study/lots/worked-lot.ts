import type { LotDesk, LotValues } from './lot-desk.ts';
import { type LotState, lotStates } from './lot-points.ts';
import type { LotTerms } from './lot-terms.ts';
import { isOver } from './tolerance.ts';
import { type PriceSlope, costAt } from './walk-away.ts';

/** A lot worked out in all its states. */
export interface Worked {
  readonly terms: LotTerms;
  /** As it was read. */
  readonly mean: LotValues;
  /** Cost of a tonne of product at the price it is taken at; NaN where that cannot be told. */
  readonly cost: number;
  /** Payable tonnes of the price's own basis for a tonne as received, at that price. */
  readonly perTonne: number;
  /** Tonnes of product for which it is enough; NaN where its weight is not known. */
  readonly product: number;
  readonly corners: readonly PriceSlope[];
  readonly moister: PriceSlope;
  readonly dirtier: PriceSlope;
  readonly tolerated: PriceSlope | null;
  /** Whether it has no place in the ranking. */
  readonly isOut: boolean;
  readonly isExpired: boolean;
}

/** Works lots out together: everything at their means, the money alone in all other states. `today` is a day such as "2026-09-30". */
export function workedLots(all: readonly LotTerms[], desk: LotDesk, today: string): readonly Worked[] {
  const states = all.map(lotStates);
  const means = desk.work(
    states.map(([mean], index) => ({ terms: all[index]!, point: mean.point })),
    'everything',
  );
  const others = states.map(([, ...rest]) => rest);
  const values = desk.work(
    others.flatMap((rest, index) => rest.map(({ point }) => ({ terms: all[index]!, point }))),
    'money',
  );
  let from = 0;
  return all.map((terms, index) => {
    const rest = others[index]!;
    from += rest.length;
    const slopes = values.slice(from - rest.length, from).map(({ slope }) => slope);
    return workedLot(terms, means[index]!, rest, slopes, today);
  });
}

const nothing: PriceSlope = { atNothing: NaN, above: NaN, below: NaN };

/** The price that is paid for a lot at once. */
export function priceNow({ charged, creditLeft }: LotTerms): number {
  return charged * creditLeft;
}

function workedLot(
  terms: LotTerms,
  values: LotValues,
  states: readonly LotState[],
  slopes: readonly PriceSlope[],
  today: string,
): Worked {
  const { lot, excess, moisture, unusable, tonnes } = terms;
  // Even from rubble a line makes something by its removal rates; what holds no paper at all is not stock.
  const mean = unusable.mean < 100 ? values : { ...values, slope: nothing, carbon: NaN, yield: NaN };
  const of = (name: LotState['name']): PriceSlope | null =>
    slopes[states.findIndex((state) => state.name === name)] ?? null;
  const price = priceNow(terms);
  const cost = costAt(mean.slope, price);
  return {
    terms,
    mean,
    cost,
    perTonne: (price > 0 ? mean.slope.above : mean.slope.below) / mean.feed / mean.received,
    product: (tonnes * (1 - moisture.mean / 100)) / mean.feed,
    corners: slopes.filter((_, place) => states[place]?.name === 'corner'),
    moister: of('moister') ?? nothing,
    dirtier: of('dirtier') ?? nothing,
    tolerated: of('tolerated'),
    isOut: Number.isNaN(cost) || (lot.remedy === 'refuse' && isOver(excess)),
    isExpired: lot.validUntil !== undefined && lot.validUntil < today,
  };
}
