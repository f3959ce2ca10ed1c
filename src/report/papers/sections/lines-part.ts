import { formatNumber } from '../../../wording/number-format.ts';
import type { Markup } from '../markup.ts';
import type { PaperFacts } from '../paper-facts.ts';
import { part } from '../part.ts';
import { ruledTable } from '../ruled-table.ts';

/** Every preparation line with what it is fed and yields, and what each route buys. */
export function linesPart({ comparison }: PaperFacts, locale: string): Markup {
  const number = (value: number, decimals: number): string => formatNumber(value, { locale, decimals });
  const lines = comparison.routes.flatMap((route) =>
    route.lines.map((line) => ({
      cells: [
        `${route.label}: ${line.label}`,
        number(line.feed, 4),
        number(line.stock, 4),
        number(line.yield * 100, 2),
        number(line.fibreYield * 100, 2),
      ],
    })),
  );
  const bought = comparison.routes.flatMap((route) =>
    route.purchased.map((each) => ({
      cells: [`${route.label}: ${each.label}`, number(each.boneDry, 4), number(each.asReceived, 4)],
    })),
  );
  const columns = (heads: readonly string[]) =>
    heads.map((head, place) => ({ head, holds: place === 0 ? 'words' : 'figures' }) as const);
  return part(
    'Preparation lines',
    'per tonne of product',
    ruledTable(
      columns(['Line', 'fed, bdt', 'stock, bdt', 'yield, %', 'fibre yield, %']),
      lines,
      'Lines and their yields',
    ),
    ruledTable(columns(['Bought', 'bone-dry, bdt', 'as received, t']), bought, 'Fibre bought'),
  );
}
