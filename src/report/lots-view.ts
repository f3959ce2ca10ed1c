import type { Lots } from '../case/lots.ts';
import { kindOfLines } from '../case/route-kind.ts';
import { paperGrades } from '../paper/materials/en-643.ts';
import type { OpenCase } from '../study/open-case.ts';
import { newLot } from '../study/lots/new-lot.ts';
import { priceLots } from '../study/lots/price-lots.ts';
import type { PricedLot } from '../study/lots/priced-lot.ts';
import type { VirginInstead } from '../study/lots/virgin-instead.ts';

/** Lots as the screen shows them. */
export interface LotsView {
  /** What the case holds of lots, or the draft that was asked about. */
  readonly content: Lots;
  readonly line: { readonly route: string; readonly line: string; readonly label: string; readonly isGone: boolean };
  /** Lines that lots could feed. */
  readonly lines: readonly { readonly route: string; readonly line: string; readonly label: string }[];
  readonly virgin: VirginInstead | null;
  /** Cost of a tonne of product as the line is fed today. */
  readonly today: number;
  readonly product: string;
  readonly lots: readonly PricedLot[];
  readonly grades: readonly { readonly code: string; readonly name: string; readonly group: string }[];
  /** A lot to begin with. */
  readonly fresh: Lots['offers'][number];
}

/** Null for a case in which no line is fed recovered paper. */
export function lotsView(open: OpenCase, today: string, draft: Lots | null): LotsView | null {
  const content = draft ?? open.content.lots ?? { offers: [] };
  const priced = priceLots(open, today, content);
  if (priced === null) return null;
  const { line, ...rest } = priced;
  return {
    content,
    line: {
      route: line.route.id,
      line: line.line.id,
      label: `${line.route.label}, ${line.line.label}`,
      isGone: line.isGone,
    },
    lines: open.content.routes.flatMap((route) =>
      route.lines
        .filter((each) => kindOfLines([each], open.content.materials) === 'recovered')
        .map((each) => ({ route: route.id, line: each.id, label: `${route.label}, ${each.label}` })),
    ),
    ...rest,
    product: open.content.product.name,
    grades: [...paperGrades.values()].map(({ code, name, group }) => ({ code, name, group })),
    fresh: newLot(open, 'New lot'),
  };
}
