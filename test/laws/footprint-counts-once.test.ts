import { describe, expect, it } from 'vitest';
import { type OpenCase, changeInput, editStructure, footprint, productChoices, startCase } from '../../src/index.ts';
import { workOut } from '../../src/study/open-case.ts';
import { demonstration, valueOf } from '../examples/demonstration.ts';
import { madeFrom, madeOf } from './made-of.ts';

// Laws of a footprint that must hold for every product: nothing is counted twice, and what is one thing for money is another for carbon.
// A board line without deinking, one with washing, and the shortest of all stand for the rest.
const cases = productChoices().flatMap(({ virgin: [virgin], recovered: [recovered] }) => {
  const ids = { virgin: virgin?.id ?? '', recovered: recovered?.id ?? '' };
  const told = { title: ids.recovered, tonnesPerYear: '100000', currency: 'EUR', priceYear: '2024' };
  return ['testliner', 'tissue', 'moulded'].includes(ids.recovered)
    ? [{ name: ids.recovered, open: valueOf(startCase({ ...ids, ...told })) }]
    : [];
});

it('three products are looked at', () => {
  expect(cases.map(({ name }) => name).sort()).toEqual(['moulded', 'testliner', 'tissue']);
});

const withFigure = (open: OpenCase, id: string, value: string, unit = ''): OpenCase =>
  valueOf(changeInput(open, id, `${value} ${unit}`.trim(), { status: 'invented', source: 'A test' }));
const causesOf = (open: OpenCase, route = 'recovered'): ReadonlyMap<string, number> =>
  new Map(
    footprint(open)
      .routes.find(({ id }) => id === route)
      ?.causes.map(({ id, amount }) => [id, amount]),
  );
const number = (open: OpenCase, id: string): number => open.values.number(`recovered.${id}`);

/** Causes whose amounts differ between two cases, or that only one of them has. */
function changedCauses(before: OpenCase, after: OpenCase): readonly string[] {
  const [old, now] = [causesOf(before), causesOf(after)];
  return [...new Set([...old.keys(), ...now.keys()])].filter((id) => old.get(id) !== now.get(id)).sort();
}

const ofHeat = ['fuel', 'fuelSupply', 'boughtHeat', 'boughtHeatSupply'];

describe.each(cases)('in a case of $name', ({ open }) => {
  const bought = valueOf(
    workOut({
      ...open.content,
      routes: open.content.routes.map((route) => ({ ...route, heat: 'bought heat' as const })),
      inputs: { ...open.content.inputs, 'price.heat': { value: '12', unit: 'EUR/GJ' } },
    }),
  );

  it('heat is made or bought, never both: scope 1 fuel goes where scope 2 heat comes', () => {
    const [made, purchased] = [causesOf(open), causesOf(bought)];

    expect(ofHeat.map((id) => made.has(id))).toEqual([true, true, false, false]);
    expect(ofHeat.map((id) => purchased.has(id))).toEqual([false, false, true, true]);
    expect(changedCauses(open, bought)).toEqual([...ofHeat].sort());
  });

  it('scope 1 loses the fuel, scope 2 gains the heat, and scope 3 changes the supply of the one for that of the other', () => {
    const [made, purchased] = [causesOf(open), causesOf(bought)];
    const change = (scope: string) => number(bought, `footprint.${scope}`) - number(open, `footprint.${scope}`);
    const supplies = (purchased.get('boughtHeatSupply') ?? NaN) - (made.get('fuelSupply') ?? NaN);

    expect(change('scope1')).toBeCloseTo(-(made.get('fuel') ?? NaN), 9);
    expect(change('scope2')).toBeCloseTo(purchased.get('boughtHeat') ?? NaN, 9);
    expect(change('scope3')).toBeCloseTo(supplies, 9);
  });

  it('heat from residues spares fuel once: in the fuel, and as a credit in money', () => {
    // Coarse rejects are burned outside unless something is sent to the own boiler.
    const burning = withFigure(open, 'residue.coarse.to.boiler', '60', '%');
    const heat = number(burning, 'heat.fromResidues') - number(open, 'heat.fromResidues');
    const spared = heat / open.values.number('boiler.efficiency');
    const price = open.values.number('price.usefulHeat');
    const change = (id: string) => number(burning, id) - number(open, id);

    expect(heat).toBeGreaterThan(0);
    expect(change('fuel')).toBeCloseTo(-spared, 10);
    expect(change('footprint.fuel')).toBeCloseTo(-spared * open.values.number('carbon.fuel'), 9);
    expect(change('heat.total')).toBe(0);
    expect(change('cost.heat')).toBe(0);
    expect(change('cost.credits')).toBeCloseTo(-heat * price, 9);
  });

  it('landfill tax moves money and no carbon; landfill gas moves carbon and no money', () => {
    // Nothing of moulded fibre but junk is landfilled by default, so some of it is sent there.
    const laid = withFigure(open, 'residue.coarse.to.landfill', '50', '%');
    const taxed = withFigure(laid, 'destination.landfill.tax', '200', 'EUR/wet-t');
    const gassed = withFigure(laid, 'landfill.docf', '0.7');

    expect(changedCauses(laid, taxed)).toEqual([]);
    expect(number(taxed, 'cost.residues.landfillTax')).toBeGreaterThan(number(laid, 'cost.residues.landfillTax'));
    expect(changedCauses(laid, gassed)).toEqual(['landfill']);
    expect(number(gassed, 'cost.total')).toBe(number(laid, 'cost.total'));
  });

  it('neither landfill tax nor landfill gas is made of the other', () => {
    const graph = open.model.graph;

    expect([...madeOf(graph, 'recovered.footprint.total')].filter((id) => id.includes('.cost.'))).toEqual([]);
    expect([...madeOf(graph, 'recovered.footprint.total')].filter((id) => /tax|price\./u.test(id))).toEqual([]);
    expect([...madeOf(graph, 'recovered.cost.total')].filter((id) => id.startsWith('landfill.'))).toEqual([]);
  });

  it('another set of warming potentials moves the methane alone, in their ratio', () => {
    const laid = withFigure(open, 'residue.coarse.to.landfill', '50', '%');
    const older = valueOf(editStructure(laid, { kind: 'set basis', basis: { gwp: 'AR4' } }));
    const newer = valueOf(editStructure(laid, { kind: 'set basis', basis: { gwp: 'AR6' } }));
    const methane = (from: OpenCase) => causesOf(from).get('landfill') ?? NaN;

    expect(changedCauses(laid, older)).toEqual(['landfill']);
    expect(changedCauses(laid, newer)).toEqual(['landfill']);
    expect(methane(older) / methane(laid)).toBeCloseTo(25 / 28, 12);
    expect(methane(newer) / methane(laid)).toBeCloseTo(27 / 28, 12);
    expect(number(older, 'footprint.biogenic')).toBe(number(laid, 'footprint.biogenic'));
  });

  it('power by contract stands beside scope 2 by location, in no sum', () => {
    const contract = withFigure(open, 'carbon.contract', '0');
    const [before, after] = [open, contract].map((each) => footprint(each).routes[1]);

    expect(before?.powerByContract).toBeNull();
    expect(after?.powerByContract).toBe(0);
    expect(after?.total).toBe(before?.total);
    expect(madeOf(contract.model.graph, 'recovered.footprint.total').has('carbon.contract')).toBe(false);
  });

  it('the marginal factor of the grid stands in the effect of the change and nowhere else', () => {
    const french = valueOf(editStructure(open, { kind: 'set basis', basis: { grid: 'FRA' } }));
    const made = madeFrom(french.model.graph, 'carbon.gridMarginal');
    const used = (route: string) => french.values.number(`${route}.electricity.total`);

    expect([...made].sort()).toEqual(['carbon.gridMarginal', 'difference.footprint.marginalPower']);
    expect(french.values.number('difference.footprint.marginalPower')).toBeCloseTo(
      (used('recovered') - used('virgin')) * french.values.number('carbon.gridMarginal'),
      9,
    );
  });

  it('no marginal factor is known for the European grid as a whole, so no effect is told', () => {
    expect(open.values.has('carbon.gridMarginal')).toBe(false);
    expect(open.values.has('difference.footprint.marginalPower')).toBe(false);
  });

  it('more carbon in burned fibre is more biogenic CO2 and no more in any scope', () => {
    const rich = withFigure(open, 'carbon.inFibre', '0.48');

    expect(changedCauses(open, rich)).toEqual([]);
    expect(number(rich, 'footprint.biogenic')).toBeGreaterThanOrEqual(number(open, 'footprint.biogenic'));
    expect(number(rich, 'footprint.total')).toBe(number(open, 'footprint.total'));
  });

  it('a route and its copy differ by no gram, in any scope', () => {
    const twice = valueOf(editStructure(open, { kind: 'duplicate route', route: 'recovered' }));
    const faced = valueOf(editStructure(twice, { kind: 'compare routes', base: 'recovered', with: 'recovered-2' }));
    const { difference } = footprint(faced);

    expect(difference.total).toBe(0);
    expect(difference.scopes.map(({ amount }) => amount)).toEqual([0, 0, 0]);
  });
});

it('in the demonstration a landfill of its own is scope 1, and that of others scope 3: the same methane', () => {
  const others = demonstration();
  const own = valueOf(
    workOut({
      ...others.content,
      destinations: others.content.destinations.map((each) =>
        each.id === 'landfill' ? { ...each, owned: true } : each,
      ),
    }),
  );
  const [before, after] = [causesOf(others), causesOf(own)];

  expect(changedCauses(others, own)).toEqual(['landfill', 'ownLandfill']);
  expect(before.get('landfill')).toBeGreaterThan(0);
  expect(after.get('ownLandfill')).toBe(before.get('landfill'));
  expect(after.get('landfill')).toBe(0);
  expect(number(own, 'footprint.total')).toBeCloseTo(number(others, 'footprint.total'), 9);
});
