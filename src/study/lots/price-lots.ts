import type { Alternative, Lots } from '../../case/lots.ts';
import type { OpenCase } from '../open-case.ts';
import { concessions } from './concessions.ts';
import { LotDesk } from './lot-desk.ts';
import { priceUnit } from './lot-entries.ts';
import { type LotLine, lotLine } from './lot-line.ts';
import { lotNotes } from './lot-notes.ts';
import { lotTerms } from './lot-terms.ts';
import { overTolerance } from './over-tolerance.ts';
import type { PricedLot, WalkAway } from './priced-lot.ts';
import { settledWeight } from './settled-weight.ts';
import { type VirginInstead, virginInstead } from './virgin-instead.ts';
import { type PriceSlope, priceAt } from './walk-away.ts';
import { type Worked, workedLots } from './worked-lot.ts';

/** Lots side by side for the line that they would feed. */
export interface PricedLots {
  readonly line: LotLine;
  readonly virgin: VirginInstead | null;
  /** Cost of a tonne of product as the line is fed today. */
  readonly today: number;
  readonly lots: readonly PricedLot[];
}

interface Prepared {
  readonly place: LotLine;
  readonly desk: LotDesk;
  readonly virgin: VirginInstead | null;
}

// Lots do not change the model of a case, so that what was built for it serves while they are typed.
const prepared = new WeakMap<object, Map<string, Prepared>>();

/** Prices lots as they are given, or those of the case; `today` is a day such as "2026-09-30". Null for a case without a recovered line. */
export function priceLots(
  open: OpenCase,
  today: string,
  lots: Lots | undefined = open.content.lots,
): PricedLots | null {
  const content = { ...open.content, lots: lots ?? { offers: [] } };
  const ready = preparedFor({ ...open, content });
  if (ready === null) return null;
  const { place, desk, virgin } = ready;
  const all = content.lots.offers.map((lot) => lotTerms({ ...open, content }, place, lot));
  const worked = workedLots(all, desk, today);
  const ranks = ranked(worked);
  return {
    line: place,
    virgin,
    today: open.values.number(`${place.route.id}.cost.total`),
    lots: worked.map((each) => pricedLot(each, worked, ranks.get(each) ?? null, virgin, content)),
  };
}

function preparedFor(open: OpenCase): Prepared | null {
  const place = lotLine(open);
  if (place === null) return null;
  const known = prepared.get(open.model.graph) ?? new Map<string, Prepared>();
  prepared.set(open.model.graph, known);
  const key = `${place.route.id}.${place.line.id}`;
  const made = known.get(key) ?? { place, desk: new LotDesk(open, place), virgin: virginInstead(open, place) };
  known.set(key, made);
  return { ...made, place };
}

function ranked(all: readonly Worked[]): ReadonlyMap<Worked, number> {
  const inOrder = all.filter(({ isOut }) => !isOut).toSorted((one, other) => one.cost - other.cost);
  return new Map(inOrder.map((each, place) => [each, place + 1]));
}

function pricedLot(
  worked: Worked,
  all: readonly Worked[],
  rank: number | null,
  virgin: VirginInstead | null,
  { currency, lots }: { readonly currency: string; readonly lots: Lots },
): PricedLot {
  const { terms, mean, cost, product } = worked;
  const settled = settledWeight(terms, worked.perTonne);
  return {
    lot: terms.lot,
    grade: terms.grade,
    priceUnit: priceUnit(currency, terms.lot.basis),
    asked: terms.asked,
    paidNow: terms.asked * terms.creditLeft,
    moisture: terms.moisture,
    unusable: terms.unusable,
    settled,
    overTolerance: overTolerance(worked),
    stockPerTonne: mean.yield / mean.received,
    freight: terms.freight + terms.handling,
    cost,
    carbon: mean.carbon,
    product,
    rank,
    walkAway: walkAwayOf(worked, all, virgin, lots),
    worth: concessions(worked),
    notes: lotNotes(worked),
    values: { feed: mean.feed, received: mean.received, ash: mean.ash, macroStickies: mean.macroStickies },
  };
}

function walkAwayOf(worked: Worked, all: readonly Worked[], virgin: VirginInstead | null, lots: Lots): WalkAway {
  const others = all.filter((each) => each !== worked && !each.isOut && !each.isExpired);
  const best = others.reduce<Worked | null>(
    (least, each) => (least === null || each.cost < least.cost ? each : least),
    null,
  );
  const costs: Readonly<Record<Alternative, number>> = {
    'virgin line': virgin?.cost ?? NaN,
    'best other lot': best?.cost ?? NaN,
    'target cost': Number(lots.target ?? NaN),
  };
  // A price that is paid later may be higher by what waiting is worth.
  const priceOf = (slope: PriceSlope, cost: number): number => priceAt(slope, cost) / worked.terms.creditLeft;
  const against = lots.against ?? cheaper(costs);
  const cost = against === null ? NaN : costs[against];
  const ends = worked.corners.map((slope) => priceOf(slope, cost));
  const isRead = ends.length > 0 && ends.every((end) => Number.isFinite(end));
  return {
    virgin: priceOf(worked.mean.slope, costs['virgin line']),
    other: priceOf(worked.mean.slope, costs['best other lot']),
    otherLot: best?.terms.lot.id ?? null,
    target: priceOf(worked.mean.slope, costs['target cost']),
    against,
    price: priceOf(worked.mean.slope, cost),
    low: isRead ? Math.min(...ends) : null,
    high: isRead ? Math.max(...ends) : null,
  };
}

function cheaper(costs: Readonly<Record<Alternative, number>>): Alternative | null {
  const known = (['best other lot', 'virgin line'] as const).filter((each) => Number.isFinite(costs[each]));
  return (
    known.toSorted((one, other) => costs[one] - costs[other])[0] ??
    (Number.isFinite(costs['target cost']) ? 'target cost' : null)
  );
}
