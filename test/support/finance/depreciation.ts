/** Charges of the years of use, the first year first, in the money of the cost. Depreciation is fixed in the money of the day it was bought. */
export type Charges = readonly number[];

/**
 * The same charge every year, down to the residual value. Whole years, at least one, else it throws. Source: function SLN, Microsoft
 * Support, Excel function reference, undated.
 */
export function straightLine(cost: number, years: number, residual = 0): Charges {
  return Array.from({ length: wholeYears(years) }, () => (cost - residual) / years);
}

/**
 * Each year the share factor/years of what is still on the books, never rounded; from the year in which an even spread of the rest is
 * larger, that one. Never below the residual value, and at the end exactly there. Whole years, at least one, else it throws. Factor 2 is
 * the usual double declining balance. Source: function DDB, LibreOffice Help, Financial Functions Part One, The Document Foundation; the
 * change to the straight line is common practice, no source.
 */
export function decliningBalance(cost: number, years: number, factor = 2, residual = 0): Charges {
  const charges: number[] = [];
  let book = cost;
  for (let left = wholeYears(years); left > 0; left -= 1) {
    const rest = book - residual;
    const charge = Math.min(Math.max((book * factor) / years, rest / left), rest);
    charges.push(charge);
    book -= charge;
  }
  return charges;
}

export type TableDepreciation =
  | { readonly ok: true; readonly charges: Charges }
  | { readonly ok: false; readonly problem: 'not the whole'; readonly total: number }
  | { readonly ok: false; readonly problem: 'below nothing'; readonly year: number };

/** Typed shares have few digits, so this is only what adding them up can lose. */
const lost = 1e-9;

/** By the user's own shares of the cost, one a year; they must not be negative and must add up to 1, else what is wrong is returned. */
export function tableDepreciation(cost: number, shares: readonly number[]): TableDepreciation {
  const negative = shares.findIndex((share) => !(share >= 0));
  if (negative >= 0) return { ok: false, problem: 'below nothing', year: negative + 1 };
  const total = shares.reduce((sum, share) => sum + share, 0);
  if (!(Math.abs(total - 1) <= lost)) return { ok: false, problem: 'not the whole', total };
  return { ok: true, charges: shares.map((share) => share * cost) };
}

/** What is on the books after so many years of use: the cost less the charges so far, the cost itself after none. */
export function bookValueAfter(cost: number, charges: Charges, year: number): number {
  return charges.slice(0, Math.max(year, 0)).reduce((book, charge) => book - charge, cost);
}

function wholeYears(years: number): number {
  if (!Number.isInteger(years) || years < 1) throw new RangeError('depreciation takes whole years, at least one');
  return years;
}
