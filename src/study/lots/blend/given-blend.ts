import type { Blend } from '../../../case/lots.ts';
import type { OpenCase } from '../../open-case.ts';
import type { PricedLots } from '../price-lots.ts';
import { type BlendCheck, type BlendRecord, blendRecord, checksOf, stockSharesOf } from './blend-record.ts';
import { blendLimits } from './blend-limit.ts';
import { blendable } from './least-cost-blend.ts';

/** A blend by the shares that somebody gave, held against the limits. */
export type GivenBlend =
  | { readonly kind: 'blended'; readonly record: BlendRecord; readonly checks: readonly BlendCheck[] }
  /** Shares do not add up to the whole; their sum in per cent. */
  | { readonly kind: 'not whole'; readonly sum: number }
  /** A lot with a share has no price, is refused or has run out. */
  | { readonly kind: 'not to be had'; readonly lots: readonly string[] };

/** Null where nobody gave shares. */
export function givenBlend(open: OpenCase, priced: PricedLots, blend: Blend): GivenBlend | null {
  const shares = Object.entries(blend.shares ?? {}).filter(([, share]) => Number(share) > 0);
  if (shares.length === 0) return null;
  const lots = blendable(priced);
  const missing = shares.map(([id]) => id).filter((id) => !lots.some(({ lot }) => lot.id === id));
  if (missing.length > 0) return { kind: 'not to be had', lots: missing };
  const sum = shares.reduce((all, [, share]) => all + Number(share), 0);
  if (Math.abs(sum - 100) > 1e-9) return { kind: 'not whole', sum };
  const feeds = lots.map(({ lot }) => Number(blend.shares?.[lot.id] ?? 0));
  const record = blendRecord(open, priced.line, lots, stockSharesOf(lots, feeds));
  if (record === null) return null;
  return { kind: 'blended', record, checks: checksOf(blendLimits(blend, lots), record) };
}
