import type { Additive, Case, Line, Material, Route } from '../../src/case/case.ts';
import { type TemplateEntry, materialEntries, templateEntries } from '../../src/paper/catalogue.ts';

/** The template of that id; an unknown one is an error of the test. */
function templateNamed(id: string): TemplateEntry {
  const found = templateEntries.find((template) => template.id === id);
  if (found === undefined) throw new Error(`No template "${id}"`);
  return found;
}

/** A case whose two routes are two templates as they are, with no figure of its own but those that have no default. */
export function templateCase(withId: string, baseId: string): Case {
  const [used, base] = [templateNamed(withId), templateNamed(baseId)];
  return {
    title: used.product,
    note: '',
    currency: 'EUR',
    priceYear: '2024',
    product: { name: used.product, machine: used.machine },
    materials: [...new Set([used, base].flatMap((each) => each.lines.map((line) => line.material)))].map(materialOf),
    chemicals: [],
    destinations: [
      { id: 'landfill', label: 'Landfill', kind: 'landfill' },
      { id: 'incineration', label: 'Incineration', kind: 'incineration' },
      { id: 'spreading', label: 'Spreading', kind: 'spreading' },
    ],
    routes: [routeOf(base), routeOf(used)],
    compare: { base: base.id, with: used.id },
    inputs: {
      'product.tonnes': { value: '100000', unit: 't/a' },
      ...Object.fromEntries([used, base].flatMap(figuresOf)),
    },
  };
}

function materialOf(id: string): Material {
  const entry = materialEntries.get(id);
  if (entry === undefined) throw new Error(`No material "${id}"`);
  return {
    id,
    label: entry.label,
    like: id,
    origin: entry.origin,
    price: { basis: entry.priceBasis, kind: 'net' },
    settlement: 'as weighed',
  };
}

const additives: readonly Additive[] = [
  { id: 'filler', label: 'Filler', place: 'wet end', kind: 'mineral' },
  { id: 'starch', label: 'Surface starch', place: 'surface', kind: 'organic' },
];

function routeOf(template: TemplateEntry): Route {
  const lines = template.lines.map(({ material, train }, place): Line => ({
    id: `line${String(place + 1)}`,
    label: material,
    recipe: [{ material }],
    stages: train.map((like, at) => ({ id: `stage${String(at + 1)}`, like })),
  }));
  return {
    id: template.id,
    label: template.id,
    lines,
    balance: 'line1',
    additives,
    machineChemicals: ['retention'],
    water: 'fresh water given',
    heat: 'own boiler',
    capital: 'none',
    charges: [],
  };
}

/** Shares of all lines but the balancing first. */
function figuresOf(template: TemplateEntry): [string, { value: string; unit: string }][] {
  return template.lines.flatMap((line, place): [string, { value: string; unit: string }][] =>
    place === 0
      ? []
      : [[`${template.id}.line${String(place + 1)}.share`, { value: line.share.value, unit: line.share.unit }]],
  );
}
