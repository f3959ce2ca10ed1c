import type { Blend } from '../../../case/lots.ts';
import type { OpenCase } from '../../open-case.ts';
import type { PricedLot } from '../priced-lot.ts';
import type { PricedLots } from '../price-lots.ts';
import { type BlendCheck, type BlendRecord, blendRecord, checksOf } from './blend-record.ts';
import { type BlendLimit, type BlendLimitName, blendLimits } from './blend-limit.ts';
import type { LinearRow, LinearSolver } from './linear-program.ts';

/** The cheapest blend of the lots on offer, or why there is none. */
export type LeastCostBlend =
  | { readonly kind: 'found'; readonly record: BlendRecord; readonly checks: readonly BlendCheck[] }
  /** No blend keeps all limits; those that must give, with what the nearest blend comes to. */
  | { readonly kind: 'none'; readonly reasons: readonly BlendReason[] }
  | { readonly kind: 'no lots' }
  | { readonly kind: 'unsolved'; readonly status: string };

export interface BlendReason {
  readonly name: BlendLimitName;
  readonly wanted: number;
  readonly reached: number;
}

/** Lots that can be had and priced: those that are refused, have run out or lack a figure are left out. */
export function blendable({ lots }: PricedLots): readonly PricedLot[] {
  return lots.filter(({ rank, notes }) => rank !== null && !notes.some(({ kind }) => kind === 'expired'));
}

/**
 * Solves for the shares of the stock that each lot should bring: the train is linear, so that a blend costs the mean of what its lots cost alone.
 * What comes of it is worked out again as a case of its own, and its limits are checked on that.
 */
export function leastCostBlend(open: OpenCase, priced: PricedLots, blend: Blend, solve: LinearSolver): LeastCostBlend {
  const lots = blendable(priced);
  if (lots.length === 0) return { kind: 'no lots' };
  const limits = blendLimits(blend, lots);
  const whole: LinearRow = { coefficients: lots.map(() => 1), least: 1, most: 1 };
  const rows = limits.map(({ excess }): LinearRow => ({ coefficients: scaled(excess), least: null, most: 0 }));
  const answer = solve({ costs: lots.map(({ cost }) => cost), rows: [whole, ...rows] });
  if (answer.kind === 'unsolved') return answer;
  if (answer.kind === 'impossible') return nearest(lots, limits, [whole, ...rows], solve);
  const record = blendRecord(open, priced.line, lots, answer.amounts);
  return record === null
    ? { kind: 'unsolved', status: '' }
    : { kind: 'found', record, checks: checksOf(limits, record) };
}

/** Rows are brought to one scale, so that what is given way is comparable between limits of different units. */
function scaled(excess: readonly number[]): readonly number[] {
  const largest = Math.max(...excess.map(Math.abs));
  return largest === 0 ? excess : excess.map((each) => each / largest);
}

/** The blend that breaks its limits least in sum: the limits it breaks are the reason that none keeps them all. */
function nearest(
  lots: readonly PricedLot[],
  limits: readonly BlendLimit[],
  [whole, ...rows]: readonly LinearRow[],
  solve: LinearSolver,
): LeastCostBlend {
  const none = limits.map(() => 0);
  const answer = solve({
    costs: [...lots.map(() => 0), ...limits.map(() => 1)],
    rows: [
      { ...whole!, coefficients: [...whole!.coefficients, ...none] },
      ...rows.map((row, place) => ({
        ...row,
        coefficients: [...row.coefficients, ...none.map((_, at) => (at === place ? -1 : 0))],
      })),
    ],
  });
  if (answer.kind !== 'solved') return { kind: 'unsolved', status: answer.kind };
  const shares = answer.amounts.slice(0, lots.length);
  const reasons = limits.flatMap(({ name, wanted, reached }, place): readonly BlendReason[] =>
    (answer.amounts[lots.length + place] ?? 0) > 1e-9 ? [{ name, wanted, reached: reached(shares) }] : [],
  );
  return { kind: 'none', reasons };
}
