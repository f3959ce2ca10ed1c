import type { RouteFootprint } from '../../../study/footprint-result.ts';
import { formatNumber } from '../../../wording/number-format.ts';
import { type Markup, element } from '../markup.ts';
import type { PaperFacts } from '../paper-facts.ts';
import { part } from '../part.ts';
import { type Row, ruledTable } from '../ruled-table.ts';

/** Carbon by scope and cause, and what stands beside the sum. */
export function footprintPart({ footprint }: PaperFacts, locale: string): Markup {
  const { routes, basis } = footprint;
  const number = (value: number, decimals = 1): string => formatNumber(value, { locale, decimals });
  const row = (label: string, of: (route: RouteFootprint) => number, role?: Row['role'], decimals = 1): Row => ({
    cells: [label, ...routes.map((route) => number(of(route), decimals))],
    ...(role === undefined ? {} : { role }),
  });
  const scopes = (routes[0]?.scopes ?? []).flatMap(({ scope }) => [
    row(scope, (route) => route.scopes.find((each) => each.scope === scope)?.amount ?? 0, 'group'),
    ...causesOf(routes, scope).map(({ id, label }) =>
      row(label, (route) => route.causes.find((cause) => cause.id === id)?.amount ?? 0),
    ),
  ]);
  const beside = [
    row('Landfill methane, all time, kg CO2e', ({ landfillMethane }) => landfillMethane.allTime),
    row('Landfill methane, 20 years, kg CO2e', ({ landfillMethane }) => landfillMethane.years20),
    row('Landfill methane, first year, kg CO2e', ({ landfillMethane }) => landfillMethane.firstYear),
    row('Biogenic CO2, kg, not summed', ({ biogenic }) => biogenic),
    row('Recycled content (ISO 14021), %', ({ recycled }) => recycled.content * 100),
    row('Wood, m³', ({ wood }) => wood, undefined, 2),
    row('Effluent, m³', ({ water }) => water.effluent),
  ];
  const columns = (head: string) =>
    [head, ...routes.map(({ label }) => label)].map(
      (name, place) => ({ head: name, holds: place === 0 ? 'words' : 'figures' }) as const,
    );
  const sum = row('All three scopes', ({ total }) => total, 'total');
  return part(
    'Carbon',
    `kg CO2e a tonne, cradle to mill gate, ${basis.allocation} rule, GWP of ${basis.gwp} over 100 years; an estimate`,
    ruledTable(columns('Cause'), [...scopes, sum], 'Carbon by scope and cause'),
    ruledTable(columns('Beside the sum'), beside, 'What stands beside the sum of carbon'),
    element('p', { class: 'care' }, basis.attribution),
  );
}

function causesOf(
  routes: readonly RouteFootprint[],
  scope: string,
): readonly { readonly id: string; readonly label: string }[] {
  const causes = routes.flatMap((route) => route.causes.filter((cause) => cause.scope === scope));
  return [...new Map(causes.map(({ id, label }) => [id, { id, label }])).values()];
}
