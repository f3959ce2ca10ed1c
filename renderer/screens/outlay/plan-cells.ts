import type { PlanResults } from '../../../src/index.ts';
import { sameProductPhrase } from '../../../src/wording/same-product-phrase.ts';
import type { Cells } from '../waste/cells.ts';
import type { PlanScale } from './plan-scale.ts';
import type { YearRow } from './year-rows.ts';

/** The table of years as cells, figures as shown, with what one must know beside it. */
export function planCells(
  rows: readonly YearRow[],
  { calendar, base, sameProduct }: Pick<PlanResults, 'calendar' | 'base' | 'sameProduct'>,
  scale: PlanScale,
  terms: { readonly currency: string; readonly money: string },
): Cells {
  const same = sameProductPhrase(sameProduct);
  return [
    [`${scale.word} ${terms.currency}`, ...calendar],
    ...rows.map(({ label, cells }) => [label, ...cells.map(({ value }) => value)]),
    [`Before financing; against ${base.label}; ${terms.money}${same === '' ? '' : `; if ${same}`}`],
  ];
}
