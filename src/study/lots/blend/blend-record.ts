import { type OpenCase, workOut } from '../../open-case.ts';
import { caseWithLots, slotId, withoutUnasked } from '../lot-case.ts';
import { shapeOf } from '../lot-desk.ts';
import type { LotLine } from '../lot-line.ts';
import { lotTerms } from '../lot-terms.ts';
import type { PricedLot } from '../priced-lot.ts';
import { pointOf, slotFigures } from '../slot-figures.ts';
import { priceNow } from '../worked-lot.ts';
import type { BlendLimit, BlendLimitName } from './blend-limit.ts';

/** A blend worked out as a case of its own, in decimals. */
export interface BlendRecord {
  readonly parts: readonly BlendPart[];
  /** Cost of a tonne of product. */
  readonly cost: number;
  /** kgCO2e of it. */
  readonly carbon: number;
  /** Ash of the product, per cent, and its macro-stickies, kg/t. */
  readonly ash: number;
  readonly macroStickies: number;
  /** Moisture of all that is bought, per cent. */
  readonly moisture: number;
  /** Shares of the stock by lot, in the order of the lots that were asked of; 0 to 1. */
  readonly stockShares: readonly number[];
}

export interface BlendPart {
  readonly lot: string;
  readonly label: string;
  readonly grade: string | null;
  /** Shares of the dry feed and of the stock, 0 to 1. */
  readonly feedShare: number;
  readonly stockShare: number;
  /** Tonnes as received for a tonne of product. */
  readonly received: number;
}

export interface BlendCheck {
  readonly name: BlendLimitName;
  readonly wanted: number;
  readonly reached: number;
  readonly kept: boolean;
}

/** Shares below this are what a solver leaves of nothing. */
const nothing = 1e-9;

/** Works a blend out from the shares of the stock that its lots bring; null where the case with it cannot be worked out. */
export function blendRecord(
  open: OpenCase,
  place: LotLine,
  lots: readonly PricedLot[],
  stockShares: readonly number[],
): BlendRecord | null {
  const feeds = lots.map(({ values }, at) => ((stockShares[at] ?? 0) > nothing ? stockShares[at]! * values.feed : 0));
  const feed = feeds.reduce((sum, each) => sum + each, 0);
  const used = lots.flatMap((lot, at) => (feeds[at]! > 0 ? [{ lot, at, feedShare: feeds[at]! / feed }] : []));
  const slots = used.map(({ lot, feedShare }) => {
    const terms = lotTerms(open, place, lot.lot);
    return {
      id: slotId(open.content, lot.lot.id),
      label: lot.lot.label,
      shape: shapeOf(terms),
      figures: slotFigures(terms, pointOf(terms), priceNow(terms)),
      share: feedShare * 100,
    };
  });
  const worked = workOut(withoutUnasked(caseWithLots(open.content, place, slots)));
  if (!worked.ok) return null;
  const { values } = worked.value;
  const route = place.route.id;
  const fed = values.number(`${route}.${place.line.id}.feed`);
  const wet = used.map(({ lot, feedShare }) => feedShare * fed * lot.values.received);
  return {
    parts: used.map(({ lot, at, feedShare }, row) => ({
      lot: lot.lot.id,
      label: lot.lot.label,
      grade: lot.lot.grade ?? null,
      feedShare,
      stockShare: stockShares[at]!,
      received: wet[row]!,
    })),
    cost: values.number(`${route}.cost.total`),
    carbon: values.number(`${route}.footprint.total`),
    ash: 100 * values.number(`${route}.productAsh`),
    macroStickies: values.number(`${route}.product.macroStickies`),
    moisture: 100 * (1 - fed / wet.reduce((sum, each) => sum + each, 0)),
    stockShares,
  };
}

/** Shares of the stock from shares of the dry feed: each tonne of feed brings one over what it takes of it. */
export function stockSharesOf(lots: readonly PricedLot[], feedShares: readonly number[]): readonly number[] {
  const stock = lots.map(({ values }, at) => (feedShares[at] ?? 0) / values.feed);
  const whole = stock.reduce((sum, each) => sum + each, 0);
  return stock.map((each) => each / whole);
}

// A limit that binds is met up to what two ways of reckoning differ by.
const closeness = 1e-6;

/** Holds a blend that was worked out against its limits; what the model of record tells takes the place of what was solved for. */
export function checksOf(limits: readonly BlendLimit[], record: BlendRecord): readonly BlendCheck[] {
  return limits.map(({ name, wanted, reached }) => {
    const value = told(name, record) ?? reached(record.stockShares);
    const over = name.kind === 'grade' && name.end === 'least' ? wanted - value : value - wanted;
    return { name, wanted, reached: value, kept: over <= closeness * Math.max(1, Math.abs(wanted)) };
  });
}

function told(name: BlendLimitName, { parts, ...record }: BlendRecord): number | null {
  switch (name.kind) {
    case 'ash':
      return record.ash;
    case 'macro-stickies':
      return record.macroStickies;
    case 'moisture':
      return record.moisture;
    case 'grade':
      return 100 * parts.filter(({ grade }) => grade === name.code).reduce((sum, { feedShare }) => sum + feedShare, 0);
    case 'available':
      return null;
  }
}
