import type { Lot } from '../../case/lots.ts';
import type { Outcome } from '../../case/problem.ts';
import { type OpenCase, workOut } from '../open-case.ts';
import { caseWithLots, slotId, withoutUnasked } from './lot-case.ts';
import { shapeOf } from './lot-desk.ts';
import { lotLine } from './lot-line.ts';
import { lotTerms } from './lot-terms.ts';
import { pointOf, slotFigures } from './slot-figures.ts';

/**
 * The case as it would be with a lot in its line, worked out in decimals: the money of record, and what an explanation of the lot's cost starts
 * from. Null where there is no line for it, or no price.
 */
export function openLot(open: OpenCase, lot: Lot): Outcome<OpenCase> | null {
  const place = lotLine(open);
  if (place === null) return null;
  const terms = lotTerms(open, place, lot);
  const price = terms.charged * terms.creditLeft;
  if (!Number.isFinite(price) || !Number.isFinite(terms.freight)) return null;
  const slot = {
    id: slotId(open.content, lot.id),
    label: lot.label,
    shape: shapeOf(terms),
    figures: slotFigures(terms, pointOf(terms), price),
    share: 100,
  };
  return workOut(withoutUnasked(caseWithLots(open.content, place, [slot])));
}
