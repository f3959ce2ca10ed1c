import type { OverTolerance } from './priced-lot.ts';
import { costAt } from './walk-away.ts';
import { type Worked, priceNow } from './worked-lot.ts';

/** What material above the tolerance of the grade costs, and what each remedy would leave; null for a lot within it. */
export function overTolerance(worked: Worked): OverTolerance | null {
  const { terms, cost, tolerated, mean, product } = worked;
  if (tolerated === null) return null;
  const more = cost - costAt(tolerated, priceNow(terms));
  const lower = Number(terms.lot.figures.downgradePrice ?? NaN);
  return {
    ...terms.excess,
    cost: more,
    lotCost: more * product,
    claimed: claimed(worked),
    downgraded: costAt(mean.slope, lower * terms.creditLeft),
  };
}

/** Cost of a tonne of product when unusable material above the tolerance is taken off the weight: payable x (1 - (u - tolerance)). */
function claimed({ terms, mean: { slope } }: Worked): number {
  const { grade, lot, unusable, asked, creditLeft } = terms;
  if (grade === null || lot.basis !== 'as received') return NaN;
  const share = (limit: number): number => 1 - Math.max(0, unusable.mean - limit) / 100;
  // What is agreed already has been taken off.
  const taken = Math.min(share(Number(grade.unwanted)), share(terms.unusableLimit)) / share(terms.unusableLimit);
  const price = asked * creditLeft;
  return price > 0 ? slope.atNothing + price * slope.above * taken : costAt(slope, price);
}
