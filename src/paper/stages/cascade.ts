import { type Quantity, constant } from '../../kernel/expression/quantity.ts';

/** What a cascade does to one component, per unit fed to it. */
export interface CascadeResult {
  /** Share that leaves with the reject of the last stage. */
  readonly loss: Quantity;
  /** Gross feed of each stage, recirculation included. */
  readonly feeds: readonly Quantity[];
}

/**
 * A cascade of single stages, closed form. `rejectRates[k]` is the share of its own feed that stage k+1 rejects; the rejects go on to
 * the next stage, the accepts back to the feed of the stage before, or forward to product where `forward[k]`. Stage 1 is forward.
 * From the last stage up, with p (to product), q (back to the stage before) and w (final reject) for one unit fed to stage k:
 * g = 1/(1 - r q'), w = r w' g, and the accepts (1 - r) g go to p or q.
 */
export function cascade(rejectRates: readonly Quantity[], forward: readonly boolean[] = []): CascadeResult {
  const one = constant('1');
  const growths: Quantity[] = [];
  let back = constant('0');
  let loss = one;
  for (let k = rejectRates.length - 1; k >= 0; k -= 1) {
    const rate = rejectRates[k] ?? one;
    const growth = one.dividedBy(rate.times(back).complement());
    loss = rate.times(loss).times(growth);
    back = k === 0 || forward[k] === true ? constant('0') : rate.complement().times(growth);
    growths.unshift(growth);
  }
  const feeds: Quantity[] = [];
  growths.forEach((growth, k) =>
    feeds.push(k === 0 ? growth : (rejectRates[k - 1] ?? one).times(feeds[k - 1] ?? one).times(growth)),
  );
  return { loss, feeds };
}
