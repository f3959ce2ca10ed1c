import type { Footprint, RouteFootprint } from '../study/footprint-result.ts';
import { publicClaimCaution } from '../wording/claim-caution-sentence.ts';
import { formatNumber } from '../wording/number-format.ts';
import { wasteCodeCaution, wasteCodeText } from '../wording/waste-code-phrase.ts';
import { unitLabel } from '../wording/unit-label.ts';
import { figuresTable, textTable } from './text-table.ts';

/** Landfill, energy, carbon, water and recycled content as a page of plain text. */
export function footprintPage(found: Footprint, warnings: readonly string[], locale: string): string {
  const number = (value: number, decimals: number): string => formatNumber(value, { locale, decimals });
  const parts = [
    carbon(found, number),
    beside(found, number),
    waste(found, number),
    energy(found, number),
    factors(found),
  ];
  const look = warnings.length === 0 ? [] : [`To look at:\n${warnings.map((sentence) => `  ${sentence}`).join('\n')}`];
  return `${[...parts, ...look, publicClaimCaution, found.basis.attribution].join('\n\n')}\n`;
}

type Show = (value: number, decimals: number) => string;

function carbon(found: Footprint, number: Show): string {
  const { routes, difference, basis } = found;
  const [base, other] = [difference.base, difference.with].map((id) => routes.find((route) => route.id === id));
  const row = (label: string, pick: (route: RouteFootprint) => number): readonly string[] => [
    label,
    ...routes.map((route) => number(pick(route), 1)),
    base === undefined || other === undefined ? '' : number(pick(other) - pick(base), 1),
  ];
  const rows = routes[0]?.scopes.flatMap(({ scope }) => {
    const ids = [
      ...new Set(
        routes.flatMap((route) => route.causes.filter((cause) => cause.scope === scope).map((cause) => cause.id)),
      ),
    ];
    const label = (id: string): string =>
      routes.flatMap((route) => route.causes).find((cause) => cause.id === id)?.label ?? id;
    const amount = (id: string) => (route: RouteFootprint) =>
      route.causes.find((cause) => cause.id === id)?.amount ?? 0;
    return [
      row(scope, (route) => route.scopes.find((each) => each.scope === scope)?.amount ?? NaN),
      ...ids.map((id) => row(`  ${label(id)}`, amount(id))),
    ];
  });
  const head = `Carbon, kg CO2e a tonne, from cradle to mill gate by the ${basis.allocation} rule; GWP of ${basis.gwp}, 100 years. An estimate.`;
  const table = [...(rows ?? []), [], row('All three', (route) => route.total), ...besideTheSum(found, number)];
  return `${head}\n${figuresTable(['', ...routes.map((route) => route.label), 'differs'], table)}`;
}

/** Scope 2 by contract, and what the difference in power moves on the grid: where there are such figures, below the sum and not in it. */
function besideTheSum({ routes, difference }: Footprint, number: Show): readonly (readonly string[])[] {
  const text = (found: { readonly amount: number } | null): string => (found === null ? '' : number(found.amount, 1));
  const { scope2ByContract, marginalPower } = difference;
  const contract = ['Scope 2, market-based', ...routes.map((route) => text(route.scope2ByContract))];
  const marginal = ['Effect of the difference on the grid (marginal), not in the sum', ...routes.map(() => '')];
  const rows = [
    ...(scope2ByContract === null ? [] : [[...contract, text(scope2ByContract)]]),
    ...(marginalPower === null ? [] : [[...marginal, text(marginalPower)]]),
  ];
  return rows.length === 0 ? [] : [[], ...rows];
}

function beside({ routes }: Footprint, number: Show): string {
  const rows: readonly (readonly [string, (route: RouteFootprint) => string])[] = [
    ['Landfill methane, all time, kg CO2e', (route) => number(route.landfillMethane.allTime, 1)],
    ['Landfill methane, 20 years', (route) => number(route.landfillMethane.years20, 1)],
    ['Landfill methane, first year', (route) => number(route.landfillMethane.firstYear, 1)],
    ['Biogenic CO2, kg, not summed', (route) => number(route.biogenic, 1)],
    ['Recycled content (ISO 14021), %', (route) => number(route.recycled.content * 100, 1)],
    ['  as it may be printed, %', (route) => String(route.recycled.printable)],
    ['Recovered share of the fibre alone, %', (route) => number(route.recycled.fibreOnly * 100, 1)],
    [`Wood, ${unitLabel('m3-wood/t')}`, (route) => number(route.wood, 2)],
    [`Fresh water, ${unitLabel('m3/t')}`, (route) => number(route.water.fresh, 1)],
    [`Effluent, ${unitLabel('m3/t')}`, (route) => number(route.water.effluent, 1)],
    ['Dissolved matter in the water loop, mg/l', (route) => number(route.water.concentration, 0)],
  ];
  return figuresTable(
    ['Beside the sum', ...routes.map((route) => route.label)],
    rows.map(([label, show]) => [label, ...routes.map(show)]),
  );
}

function waste({ routes, tonnesPerYear }: Footprint, number: Show): string {
  const rows = routes.flatMap((route) =>
    route.streams.flatMap((stream) =>
      stream.parts.map((part) => [
        `${route.label}: ${stream.label}`,
        part.label,
        wasteCodeText(stream.wasteCode),
        number(part.dry * 1000, 2),
        number(part.wet * 1000, 2),
        number(part.wet * tonnesPerYear, 0),
      ]),
    ),
  );
  const heads = ['Residues', 'to', 'code', 'dry kg/t', 'wet kg/t', 'wet t/year'];
  const table = textTable(
    heads.map((head) => ({ head, holds: ['Residues', 'to', 'code'].includes(head) ? 'words' : 'figures' })),
    rows,
  );
  return `${table}\n${wasteCodeCaution}`;
}

function energy({ routes }: Footprint, number: Show): string {
  const uses = routes[0]?.energy.map((each) => each.use) ?? [];
  const of = (route: RouteFootprint, use: string) => route.energy.find((each) => each.use === use);
  const rows = uses.map((use) => [
    use,
    ...routes.flatMap((route) => [number(of(route, use)?.electricity ?? 0, 1), number(of(route, use)?.heat ?? 0, 3)]),
  ]);
  const totals = ['All', ...routes.flatMap((route) => [number(route.electricity, 1), number(route.heat, 3)])];
  return figuresTable(
    ['Energy', ...routes.flatMap((route) => [`${route.label}, kWh/t`, 'GJ/t'])],
    [...rows, [], totals],
  );
}

function factors({ routes }: Footprint): string {
  const used = new Map(
    routes.flatMap((route) =>
      route.causes.flatMap((cause) => cause.factors.map((factor) => [factor.id, factor] as const)),
    ),
  );
  const heads = ['Factor', 'value', 'unit', 'year', 'boundary', 'allocation', 'GWP', 'status', 'source'] as const;
  const rows = [...used.values()].map((factor) => [
    factor.label,
    factor.value,
    unitLabel(factor.unit),
    factor.year,
    factor.boundary,
    factor.allocation,
    factor.gwp,
    factor.status === 'memory' ? 'memory, to be verified' : factor.status,
    factor.source,
  ]);
  return textTable(
    heads.map((head) => ({ head, holds: head === 'value' ? 'figures' : 'words' })),
    rows,
  );
}
