import type { Case, Destination, Route } from '../case/case.ts';
import { boughtMaterial, trainOf } from './bought-material.ts';
import { type TemplateEntry, machineEntries, materialEntries, templateEntries } from './catalogue.ts';

/** A product that a case can start from, with the furnishes the program knows for it. */
export interface ProductChoice {
  readonly product: string;
  /** Id of its machine in the program's list, and its usual moisture in per cent. */
  readonly machine: string;
  readonly moisture: string;
  readonly virgin: readonly FurnishChoice[];
  readonly recovered: readonly FurnishChoice[];
}

export interface FurnishChoice {
  readonly id: string;
  /** "Old corrugated containers 55, mixed papers and boards 45". */
  readonly furnish: string;
  readonly stages: readonly string[];
}

/** What a new case is made of. `template` ids are those of `productChoices`. */
export interface NewCase {
  readonly title: string;
  readonly virgin: string;
  readonly recovered: string;
  readonly tonnesPerYear: string;
  readonly currency: string;
  readonly priceYear: string;
}

export function productChoices(): readonly ProductChoice[] {
  const products = [...new Set(templateEntries.map((template) => template.product))];
  return products.map((product) => {
    const own = templateEntries.filter((template) => template.product === product);
    const of = (route: string) => own.filter((template) => template.route === route).map(furnishChoice);
    const machine = own[0]?.machine ?? '';
    return {
      product,
      machine,
      moisture: machineEntries.get(machine)?.['moisture']?.value ?? '',
      virgin: of('virgin'),
      recovered: of('recovered'),
    };
  });
}

function furnishChoice(template: TemplateEntry): FurnishChoice {
  const furnish = template.lines
    .map((line) => `${materialEntries.get(line.material)?.label ?? line.material} ${line.share.value}`)
    .join(', ');
  return { id: template.id, furnish, stages: template.lines[0]?.train ?? [] };
}

const destinations: readonly Destination[] = [
  { id: 'landfill', label: 'Landfill', kind: 'landfill' },
  { id: 'incineration', label: 'Outside incineration', kind: 'incineration' },
  { id: 'spreading', label: 'Land spreading', kind: 'spreading' },
  { id: 'boiler', label: 'Own boiler', kind: 'own boiler' },
  { id: 'scrap', label: 'Scrap merchant', kind: 'sale' },
];

/**
 * A case from the program's own lists: both routes of one product with their usual furnish and trains. Everything is a default but the
 * tonnes a year and the shares of the furnish. Null where a template is not known or the two are not of one product.
 */
export function newCase(wanted: NewCase): Case | null {
  const virgin = templateEntries.find((template) => template.id === wanted.virgin);
  const recovered = templateEntries.find((template) => template.id === wanted.recovered);
  if (virgin === undefined || recovered === undefined || virgin.product !== recovered.product) return null;
  const bought = [...new Set([...virgin.lines, ...recovered.lines].map((line) => line.material))];
  return {
    title: wanted.title,
    note: '',
    currency: wanted.currency,
    priceYear: wanted.priceYear,
    product: { name: virgin.product.toLowerCase(), machine: virgin.machine },
    materials: bought.flatMap((id) => boughtMaterial(id) ?? []),
    chemicals: [],
    destinations,
    routes: [routeOf('virgin', 'Virgin', virgin), routeOf('recovered', 'Recovered', recovered)],
    compare: { base: 'virgin', with: 'recovered' },
    inputs: {
      'product.tonnes': { value: wanted.tonnesPerYear, unit: 't/a' },
      ...sharesOf('virgin', virgin),
      ...sharesOf('recovered', recovered),
    },
  };
}

function routeOf(id: string, label: string, template: TemplateEntry): Route {
  return {
    id,
    label,
    lines: template.lines.map((line) => ({
      id: line.material,
      label: materialEntries.get(line.material)?.label ?? line.material,
      recipe: [{ material: line.material }],
      stages: trainOf(line.train),
    })),
    balance: balanceOf(template),
    additives: additivesOf(template.machine),
    machineChemicals: ['retention', 'coagulant'],
    water: 'fresh water given',
    heat: 'own boiler',
    capital: 'annual charge',
    charges: [],
  };
}

/** The largest virgin line, or the largest where none is virgin, takes what the others leave. */
function balanceOf({ lines }: TemplateEntry): string {
  const bySize = [...lines].sort((a, b) => Number(b.share.value) - Number(a.share.value));
  const virgin = bySize.find((line) => materialEntries.get(line.material)?.origin === 'virgin');
  return (virgin ?? bySize[0])?.material ?? '';
}

function additivesOf(machine: string): Route['additives'] {
  const share = (name: string): number => Number(machineEntries.get(machine)?.[name]?.value ?? '0');
  const wetEnd =
    machine === 'printing'
      ? ({ id: 'filler', label: 'Filler', place: 'wet end', kind: 'mineral' } as const)
      : ({ id: 'starch', label: 'Starch and size', place: 'wet end', kind: 'organic' } as const);
  const surface = { id: 'surface', label: 'Surface starch', place: 'surface', kind: 'organic' } as const;
  return [...(share('additiveShare') > 0 ? [wetEnd] : []), ...(share('surfaceShare') > 0 ? [surface] : [])];
}

function sharesOf(routeId: string, template: TemplateEntry): Case['inputs'] {
  const given = template.lines.filter((line) => line.material !== balanceOf(template));
  return Object.fromEntries(
    given.map((line) => [
      `${routeId}.${line.material}.share`,
      {
        value: line.share.value,
        unit: '%',
        status: 'practice',
        source: 'Usual furnish of the product, common practice',
      },
    ]),
  );
}
