import { formatNumber } from '../../../wording/number-format.ts';
import type { Markup } from '../markup.ts';
import type { PaperFacts } from '../paper-facts.ts';
import { part } from '../part.ts';
import { type Row, ruledTable } from '../ruled-table.ts';

/** Residues by stream and destination, of a tonne and of a year, and energy by use. */
export function residuesPart({ footprint }: PaperFacts, locale: string): Markup {
  const { routes, tonnesPerYear, currency } = footprint;
  const number = (value: number, decimals: number): string => formatNumber(value, { locale, decimals });
  const residues = routes.flatMap((route): readonly Row[] => [
    {
      role: 'group',
      cells: [
        route.label,
        '',
        number(route.waste.dry * 1000, 2),
        number(route.waste.wet * 1000, 2),
        number(route.waste.wet * tonnesPerYear, 0),
        '',
      ],
    },
    ...route.streams.flatMap((stream) =>
      stream.parts
        .filter(({ share }) => share !== 0)
        .map((way, place) => ({
          cells: [
            stream.label,
            way.label,
            number(way.dry * 1000, 2),
            number(way.wet * 1000, 2),
            number(way.wet * tonnesPerYear, 0),
            place === 0 ? number(stream.cost, 2) : '',
          ],
        })),
    ),
  ]);
  const uses = routes[0]?.energy.map(({ use }) => use) ?? [];
  const energy = uses.map((use): Row => {
    const found = routes.map((route) => route.energy.find((each) => each.use === use));
    return {
      cells: [use, ...found.flatMap((each) => [number(each?.electricity ?? 0, 1), number(each?.heat ?? 0, 3)])],
    };
  });
  const sum: Row = {
    role: 'total',
    cells: ['All', ...routes.flatMap(({ electricity, heat }) => [number(electricity, 1), number(heat, 3)])],
  };
  const columns = (heads: readonly string[], words: number) =>
    heads.map((head, place) => ({ head, holds: place < words ? 'words' : 'figures' }) as const);
  return part(
    'Residues and energy',
    'per tonne of product',
    ruledTable(
      columns(['Residue', 'to', 'dry, kg', 'as hauled, kg', 'as hauled, t a year', `cost, ${currency}/t`], 2),
      residues,
      'Residues by stream and destination',
    ),
    ruledTable(
      columns(['Energy', ...routes.flatMap(({ label }) => [`${label}, kWh`, 'GJ'])], 1),
      [...energy, sum],
      'Energy by use',
    ),
  );
}
