import type { PriceTerms } from '../../case/case.ts';
import type { PriceUnits } from '../../case/edits/trust-edits.ts';
import { worths } from '../trade-units.ts';

const metric = { 'as received': 't-ar', 'air-dry': 'adt', 'bone-dry': 'bdt' } as const;
const short = { 'as received': 'st-ar', 'air-dry': 'adst', 'bone-dry': 'bdst' } as const;
const long = { 'as received': 'lt-ar', 'air-dry': 'adlt', 'bone-dry': 'bdlt' } as const;

/** The metric tonne on the basis of a price: what its payable mass is counted in. */
export function metricTonneOf({ basis }: PriceTerms): string {
  return metric[basis];
}

/** The tonne that a price names: "adst" for an air-dry short ton. */
export function tonneOf({ basis, ton }: PriceTerms): string {
  return ton === undefined ? metric[basis] : ton === 'short' ? short[basis] : long[basis];
}

/** The units in which a price of such terms and the tonnage of its tiers are written; `own` is the currency of the case. */
export function priceUnits(terms: PriceTerms, own: string): PriceUnits {
  return { price: `${terms.currency ?? own}/${tonneOf(terms)}`, tonnage: `${metricTonneOf(terms)}/a` };
}

/** Metric tonnes in the ton of a price, as digits: 0.90718474 or 1.0160469088, exact by definition; null for the metric tonne itself. */
export function metricWorth(terms: PriceTerms): string | null {
  return worths.get(tonneOf(terms))?.worth ?? null;
}
