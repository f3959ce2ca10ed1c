import type { Case, Destination, GivenInput, Material, Route, Stage } from '../../src/case/case.ts';
import { readCase } from '../../src/case/read-case.ts';
import { writeCase } from '../../src/case/write-case.ts';

/** What a small case is about; everything that is left out is chosen so that nothing else happens. */
export interface SmallCase {
  /** The one line of route "mill". */
  readonly stages: readonly Stage[];
  /** Materials of the recipe, in order; "paper" alone unless said otherwise. */
  readonly materials?: readonly Partial<Material>[];
  readonly destinations?: readonly Destination[];
  readonly currency?: string;
  /** Changes to route "mill". */
  readonly route?: Partial<Route>;
  /** Figures by id, each as a number and a unit: "12.5 %". */
  readonly figures?: Readonly<Record<string, string>>;
}

/**
 * A case of two routes: "mill" with one line "line", which is what the test is about, and "other", which slushes the same materials.
 * The machine keeps everything and adds nothing, so that the line must bring exactly 1 bdt of stock for 1 t of a bone-dry product.
 * It passes through the text of a case file, so that nothing is tested which nobody could save.
 */
export function smallCase(about: SmallCase): Case {
  const currency = about.currency ?? 'EUR';
  const materials = (about.materials ?? [{}]).map((material): Material => ({ ...paper, ...material }));
  const recipe = materials.map(({ id }) => ({ material: id }));
  const routeOf = (id: string, stages: readonly Stage[], changes: Partial<Route>): Route => ({
    id,
    label: id === 'mill' ? 'Mill' : 'Other',
    lines: [{ id: 'line', label: 'Line', recipe, stages }],
    balance: 'line',
    additives: [],
    machineChemicals: [],
    water: 'effluent given',
    heat: 'bought heat',
    capital: 'none',
    charges: [],
    ...changes,
  });
  const figures = {
    'product.moisture': '0 %',
    'product.tonnes': '100000 t/a',
    'price.heat': `10 ${currency}/GJ`,
    ...(currency === 'EUR' ? {} : pricesIn(currency)),
    ...machineThatKeepsAll('mill'),
    ...machineThatKeepsAll('other'),
    ...(about.route?.water === 'fresh water given' ? {} : { 'mill.effluent': '10 m3/t' }),
    'other.effluent': '10 m3/t',
    ...Object.fromEntries(materials.flatMap(({ id }) => purchaseOf(id, currency))),
    ...about.figures,
  };
  return legitimate({
    title: 'Small case',
    note: '',
    currency,
    priceYear: '2026',
    product: { name: 'Product', machine: 'liner' },
    materials,
    chemicals: [],
    destinations: about.destinations ?? [{ id: 'tip', label: 'Tip', kind: 'gate-fee plant' }],
    routes: [routeOf('mill', about.stages, about.route ?? {}), routeOf('other', [{ id: 'slush', like: 'pumps' }], {})],
    compare: { base: 'other', with: 'mill' },
    inputs: Object.fromEntries(Object.entries(figures).map(([id, text]) => [id, figureOf(text)])),
  });
}

const paper: Material = {
  id: 'paper',
  label: 'Paper',
  origin: 'post-consumer',
  price: { basis: 'as received', kind: 'net' },
  settlement: 'as weighed',
};

function purchaseOf(id: string, currency: string): [string, string][] {
  return [
    [`material.${id}.moisture`, '10 %'],
    [`material.${id}.price`, `100 ${currency}/t-ar`],
  ];
}

function machineThatKeepsAll(route: string): Record<string, string> {
  return {
    [`${route}.machine.broke`]: '0 %',
    [`${route}.machine.wetEndLoss`]: '0 %',
    [`${route}.machine.additiveShare`]: '0 %',
    [`${route}.machine.surfaceShare`]: '0 %',
  };
}

/** A case in another currency has no default prices. These are what every case asks for; none matters to the tests that use them. */
function pricesIn(currency: string): Record<string, string> {
  return {
    'price.electricity': `0.1 ${currency}/kWh`,
    'price.carbon': `0 ${currency}/tCO2e`,
    'price.water': `0 ${currency}/m3`,
    'price.effluent': `0 ${currency}/m3`,
    'price.oxygenDemand': `0 ${currency}/kgCOD`,
    'material.paper.freight': `0 ${currency}/t-ar`,
    'material.paper.handling': `0 ${currency}/t-ar`,
    'destination.tip.haulage': `0 ${currency}/wet-t`,
    'destination.tip.gateFee': `0 ${currency}/wet-t`,
    'mill.labour': `0 ${currency}/a`,
    'mill.maintenance': `0 ${currency}/a`,
    'mill.priceDifference': `0 ${currency}/t`,
    'other.labour': `0 ${currency}/a`,
    'other.maintenance': `0 ${currency}/a`,
    'other.priceDifference': `0 ${currency}/t`,
    'machine.fixed': `0 ${currency}/a`,
  };
}

function figureOf(text: string): GivenInput {
  const [value = '', ...unit] = text.split(' ');
  return { value, unit: unit.join(' '), status: 'invented', source: 'Small case, worked by hand' };
}

function legitimate(content: Case): Case {
  const read = readCase(writeCase(content));
  if (!read.ok) throw new Error(`Not a case: ${JSON.stringify(read.problems)}`);
  return read.value;
}
