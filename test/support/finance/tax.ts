/**
 * What a loss is worth. At once: other profits of the company absorb it, and the tax it saves comes back in the same year. Carried forward:
 * it is set against later profits in full, the oldest loss first, without limit of years or amount, and nothing comes back in money. Both
 * are simplified rules, common practice, no source; a country may cap either.
 */
export type LossRule = 'at once' | 'carried forward';

export interface Taxes {
  /** Tax of each year in the money of the profits: above nothing is paid, below nothing comes back. */
  readonly taxes: readonly number[];
  /** Losses that no profit has absorbed by the end, not below nothing: their tax was never saved. */
  readonly lossLeft: number;
}

/** Tax by year from taxable profits (loss negative). The rate is a share, the same every year or one a year; a year without one pays none. */
export function taxesOn(profits: readonly number[], rate: number | readonly number[], rule: LossRule): Taxes {
  const rateOf = (year: number): number => (typeof rate === 'number' ? rate : (rate[year] ?? 0));
  let losses = 0;
  const taxes = profits.map((profit, year) => {
    // Plus nothing, so that a loss at no rate is 0 and not minus 0.
    if (rule === 'at once') return profit * rateOf(year) + 0;
    const used = Math.min(losses, Math.max(profit, 0));
    losses += Math.max(-profit, 0) - used;
    return Math.max(profit - used, 0) * rateOf(year);
  });
  return { taxes, lossLeft: losses };
}
