import type { RouteFootprint } from '../../study/footprint-result.ts';
import { formatNumber } from '../../wording/number-format.ts';
import { type Markup, element } from './markup.ts';
import type { PaperFacts } from './paper-facts.ts';
import { type Row, ruledTable } from './ruled-table.ts';

interface Line {
  readonly label: string;
  readonly decimals: number;
  readonly of: (route: RouteFootprint) => number;
}

const scopeOf =
  (scope: string) =>
  (route: RouteFootprint): number =>
    route.scopes.find((each) => each.scope === scope)?.amount ?? 0;

const lines: readonly Line[] = [
  { label: 'Electricity, kWh', decimals: 0, of: ({ electricity }) => electricity },
  { label: 'Heat, GJ', decimals: 2, of: ({ heat }) => heat },
  { label: 'Fresh water, m³', decimals: 1, of: ({ water }) => water.fresh },
  { label: 'Residue as hauled, kg', decimals: 0, of: ({ waste }) => waste.wet * 1000 },
  { label: 'Carbon, scope 1, kg CO2e', decimals: 0, of: scopeOf('scope 1') },
  { label: 'Carbon, scope 2, kg CO2e', decimals: 0, of: scopeOf('scope 2') },
  { label: 'Carbon, scope 3, kg CO2e', decimals: 0, of: scopeOf('scope 3') },
  { label: 'Recycled content, %', decimals: 1, of: ({ recycled }) => recycled.content * 100 },
];

/** Energy, water, waste and carbon of a tonne by each of the two routes. */
export function perTonneTable({ footprint, spread }: PaperFacts, locale: string): Markup {
  const routes = [spread.base.id, spread.with.id].flatMap(
    (id) => footprint.routes.find((route) => route.id === id) ?? [],
  );
  const rows = lines.map(({ label, decimals, of }): Row => {
    const values = routes.map(of);
    const change = (values[1] ?? NaN) - (values[0] ?? NaN);
    return {
      cells: [
        label,
        ...values.map((value) => formatNumber(value, { locale, decimals })),
        formatNumber(change, { locale, decimals, sign: true }),
      ],
    };
  });
  const columns = ['', ...routes.map(({ label }) => label), 'change'].map(
    (head, place) => ({ head, holds: place === 0 ? 'words' : 'figures' }) as const,
  );
  return element(
    'div',
    {},
    element('h2', {}, element('span', {}, 'Per tonne of product')),
    ruledTable(columns, rows, 'Energy, water, waste and carbon'),
  );
}
