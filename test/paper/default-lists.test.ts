import { describe, expect, it } from 'vitest';
import { Decimal } from '../../src/kernel/evaluate/decimal-settings.ts';
import {
  chemicalEntries,
  factor,
  fossilCarbon,
  heatingValues,
  machineDoses,
  machineEntries,
  materialEntries,
  residueEntries,
  stageEntries,
  templateEntries,
} from '../../src/paper/catalogue.ts';
import { components } from '../../src/paper/components.ts';
import variantRows from '../../src/paper/defaults/stage-variants.json' with { type: 'json' };
import stageRows from '../../src/paper/defaults/stages.json' with { type: 'json' };

const componentNames: ReadonlySet<string> = new Set(components);
const notComponents = (table: object | undefined): string[] =>
  Object.keys(table ?? {}).filter((name) => name !== 'default' && !componentNames.has(name));

function totalOf(values: readonly string[]): string {
  return values.reduce((sum, value) => sum.plus(value), new Decimal(0)).toString();
}

describe('materials of the program', () => {
  it.each([...materialEntries])('add up to exactly 100 %%: %s', (_, { composition }) => {
    expect(totalOf(Object.values(composition).map((figure) => figure.value))).toBe('100');
    expect(notComponents(composition)).toEqual([]);
  });

  it('are priced for the tonne that their price basis says', () => {
    const bases = { 'air-dry': 'EUR/adt', 'as received': 'EUR/t-ar', 'bone-dry': 'EUR/bdt' };
    for (const [id, { price, priceBasis }] of materialEntries)
      expect([id, price.unit]).toEqual([id, bases[priceBasis]]);
  });

  it('are labelled and grouped', () => {
    const labels = [...materialEntries.values()].map(({ label }) => label);

    expect(new Set(labels).size).toBe(materialEntries.size);
    for (const { label, group } of materialEntries.values()) expect([label, group]).not.toContain('');
  });
});

describe('stages of the program', () => {
  it('are those of the list and their variants', () => {
    expect(stageEntries.size).toBe(Object.keys(stageRows).length + Object.keys(variantRows).length);
  });

  it.each(Object.entries(variantRows))('hold the stage that %s is a variant of', (id, { of, change }) => {
    const [base, changed] = [stageEntries.get(of), stageEntries.get(id)];

    expect(Object.keys(stageRows)).toContain(of);
    expect(changed?.kind).toBe(base?.kind);
    expect(Object.keys(change).length).toBeGreaterThan(0);
    expect(changed).not.toEqual(base);
    // What a variant does not speak of stays as it was.
    for (const key of Object.keys(base ?? {}).filter((name) => !Object.hasOwn(change, name)))
      expect(changed).toHaveProperty(key, (base as unknown as Record<string, unknown>)[key]);
  });

  it.each([...stageEntries])('name only components, residues and chemicals that there are: %s', (_, stage) => {
    expect(notComponents(stage.removal)).toEqual([]);
    expect(notComponents(stage.streams)).toEqual([]);
    expect(notComponents(stage.cascade?.quotient)).toEqual([]);
    expect(notComponents(stage.washer?.passage)).toEqual([]);
    expect(notComponents(stage.washer?.catch)).toEqual([]);
    for (const { from, to } of stage.transforms ?? []) {
      expect([...componentNames]).toEqual(expect.arrayContaining([from, to]));
      expect(from).not.toBe(to);
    }
    for (const stream of [stage.stream, ...Object.values(stage.streams ?? {})])
      if (stream !== undefined) expect([...residueEntries.keys()]).toContain(stream);
    for (const chemical of Object.keys(stage.doses ?? {})) expect([...chemicalEntries.keys()]).toContain(chemical);
  });

  it.each([...stageEntries])('that take something away say where it goes: %s', (_, stage) => {
    const takes =
      Object.keys(stage.removal ?? {}).length > 0 || stage.cascade !== undefined || stage.washer !== undefined;

    if (takes) expect(stage.stream).toBeTypeOf('string');
    expect(stage.label).not.toBe('');
  });

  it.each([...stageEntries])('turn no more of a component into others than there is: %s', (_, stage) => {
    const turned = new Map<string, string[]>();
    for (const { from, fraction } of stage.transforms ?? [])
      turned.set(from, [...(turned.get(from) ?? []), fraction.value]);

    for (const [from, shares] of turned) expect([from, Number(totalOf(shares)) <= 100]).toEqual([from, true]);
  });
});

describe('templates of the program', () => {
  it.each(templateEntries)('name a machine, materials and stages that there are: $id', ({ machine, lines }) => {
    expect([...machineEntries.keys()]).toContain(machine);
    for (const { material, train } of lines) {
      expect([...materialEntries.keys()]).toContain(material);
      expect(train.length).toBeGreaterThan(0);
      expect(train.filter((stage) => !stageEntries.has(stage))).toEqual([]);
    }
  });

  it.each(templateEntries)('share out exactly 100 %% of the stock: $id', ({ lines }) => {
    expect(totalOf(lines.map(({ share }) => share.value))).toBe('100');
  });

  it('face each other: every product has a virgin and a recovered one, each with fibre of its kind', () => {
    const products = new Set(templateEntries.map(({ product }) => product));
    for (const product of products) {
      const routes = templateEntries.filter((template) => template.product === product).map(({ route }) => route);
      expect([product, ...routes.sort()]).toEqual([product, 'recovered', 'virgin']);
    }
    for (const { id, route, lines } of templateEntries)
      for (const { material } of lines)
        expect([id, materialEntries.get(material)?.origin === 'virgin']).toEqual([id, route === 'virgin']);
  });

  it('have names of their own', () => {
    expect(new Set(templateEntries.map(({ id }) => id)).size).toBe(templateEntries.length);
  });
});

describe('residues, machines, chemicals and factors of the program', () => {
  it.each([...residueEntries])('send all of a residue somewhere: %s', (_, { split }) => {
    expect(totalOf(Object.values(split))).toBe('1');
    for (const kind of Object.keys(split)) expect(['landfill', 'incineration', 'spreading']).toContain(kind);
  });

  it('have the same figures for every machine', () => {
    const [first = {}] = machineEntries.values();
    for (const [id, machine] of machineEntries)
      expect([id, ...Object.keys(machine)]).toEqual([id, ...Object.keys(first)]);
  });

  it('dose at the machine only chemicals that there are', () => {
    expect([...machineDoses.keys()].filter((chemical) => !chemicalEntries.has(chemical))).toEqual([]);
  });

  it('price every chemical by the kilogram, and know its strength as a share', () => {
    for (const [id, { price, carbon, strength }] of chemicalEntries) {
      expect([id, price.unit, carbon.unit]).toEqual([id, 'EUR/kg', 'kgCO2e/kg']);
      if (strength !== undefined) expect([id, strength.unit]).toEqual([id, '%']);
    }
  });

  it('burn components and factors by their own units', () => {
    for (const [name, figure] of Object.entries(heatingValues)) expect([name, figure.unit]).toEqual([name, 'GJ/bdt']);
    for (const [name, figure] of Object.entries(fossilCarbon)) expect([name, figure.unit]).toEqual([name, 'tCO2/bdt']);
    expect(factor('electricity').unit).toBe('EUR/kWh');
    expect(factor('carbon-price').unit).toBe('EUR/tCO2e');
  });
});
