import { describe, expect, it } from 'vitest';
import { type OpenCase, changeInput, editStructure, energyUses, footprint, gridAttribution } from '../../src/index.ts';
import { checksOf } from '../../src/study/checks.ts';
import { demonstration, problemsOf, valueOf } from '../examples/demonstration.ts';

const open = demonstration();
const found = footprint(open);
const routes = found.routes.map((route) => ({ name: route.id, route }));
const sum = (numbers: readonly number[]): number => numbers.reduce((before, each) => before + each, 0);
const withFigure = (id: string, typed: string, from: OpenCase = open): OpenCase =>
  valueOf(changeInput(from, id, typed, { status: 'read', source: 'Own meter, 2026' }));

it('rests on a basis that is named: fuel, grid, warming potentials, climate, rule and whom the grid data are owed to', () => {
  expect(found.basis).toEqual({
    fuel: 'natural-gas',
    grid: 'EU',
    gwp: 'AR5',
    climate: 'boreal-temperate-wet',
    allocation: 'cut-off',
    attribution: gridAttribution,
  });
  expect(gridAttribution).toMatch(/Ember/u);
  expect(gridAttribution).toMatch(/CC BY-SA 4\.0/u);
});

it('names the basis that somebody chose', () => {
  const chosen = valueOf(
    editStructure(open, {
      kind: 'set basis',
      basis: { fuel: 'lpg', grid: 'FRA', gwp: 'AR6', climate: 'tropical-dry' },
    }),
  );

  expect(footprint(chosen).basis).toMatchObject({ fuel: 'lpg', grid: 'FRA', gwp: 'AR6', climate: 'tropical-dry' });
  expect(footprint(chosen).routes[0]?.total).not.toBe(found.routes[0]?.total);
});

describe.each(routes)('the footprint of route $name', ({ name, route }) => {
  it('adds up by scope and by cause, to the total it names', () => {
    expect(sum(route.scopes.map(({ amount }) => amount))).toBeCloseTo(route.total, 8);
    expect(sum(route.causes.map(({ amount }) => amount))).toBeCloseTo(route.total, 8);
    for (const { scope, amount } of route.scopes)
      expect(sum(route.causes.filter((cause) => cause.scope === scope).map((cause) => cause.amount))).toBeCloseTo(
        amount,
        8,
      );
    expect(open.values.number(route.totalId)).toBe(route.total);
  });

  it('names for every cause that is something its factors, with year, boundary, status and source', () => {
    for (const { id, amount, factors, quantityId } of route.causes) {
      expect(open.values.number(quantityId), id).toBe(amount);
      if (amount === 0) continue;
      expect(factors.length, id).toBeGreaterThan(0);
      for (const factor of factors) {
        expect([factor.boundary, factor.source, factor.label, factor.unit].includes(''), factor.id).toBe(false);
        expect(Number(factor.value), factor.id).not.toBeNaN();
        expect(factor.year, factor.id).toMatch(/^(\d{4})?$/u);
      }
    }
  });

  it('lets methane out year by year: the first year, and the sum of twenty, are the figures told', () => {
    const { byYear, firstYear, years20, allTime } = route.landfillMethane;

    expect(allTime).toBeGreaterThan(0);
    expect(byYear).toHaveLength(50);
    expect(byYear[0]).toBeCloseTo(firstYear, 10);
    expect(sum(byYear.slice(0, 20))).toBeCloseTo(years20, 9);
    expect(sum(byYear)).toBeLessThan(allTime);
  });

  it('splits every stream over its destinations, wet and dry', () => {
    expect(route.streams.length).toBeGreaterThan(2);
    for (const { parts, wet, dry, stream } of route.streams) {
      expect(sum(parts.map((part) => part.share)), stream).toBeCloseTo(1, 10);
      expect(sum(parts.map((part) => part.wet)), stream).toBeCloseTo(wet, 12);
      expect(sum(parts.map((part) => part.dry)), stream).toBeCloseTo(dry, 12);
      expect(wet, stream).toBeGreaterThanOrEqual(dry);
    }
  });

  it('adds streams and destinations up to all residues', () => {
    for (const kind of ['wet', 'dry'] as const) {
      expect(sum(route.streams.map((stream) => stream[kind]))).toBeCloseTo(route.waste[kind], 12);
      expect(sum(route.waste.destinations.map((each) => each[kind]))).toBeCloseTo(route.waste[kind], 12);
    }
  });

  it('closes the water: fresh and what comes with materials is effluent and what leaves elsewhere', () => {
    const { fresh, withMaterials, effluent, elsewhere } = route.water;

    expect(fresh + withMaterials).toBeCloseTo(effluent + elsewhere, 9);
  });

  it('splits energy by use, each use once, up to the totals', () => {
    expect(route.energy.map(({ use }) => use)).toEqual(energyUses);
    expect(sum(route.energy.map(({ electricity }) => electricity))).toBeCloseTo(route.electricity, 9);
    expect(sum(route.energy.map(({ heat }) => heat))).toBeCloseTo(route.heat, 9);
  });

  it('is that of a case which keeps its laws, and points at quantities that exist', () => {
    expect(checksOf(open).every(({ kept }) => kept)).toBe(true);
    const ids = [
      ...route.scopes.map(({ quantityId }) => quantityId),
      ...route.streams.flatMap(({ quantityId, dryId, costId, carbonId, parts }) => [
        quantityId,
        dryId,
        costId,
        carbonId,
        ...parts.map((part) => part.quantityId),
      ]),
      route.water.freshId,
      route.water.effluentId,
      route.avoidedLandfill.quantityId,
    ];
    for (const id of ids) expect(open.values.has(id), `${name}: ${id}`).toBe(true);
  });

  it('may print a recycled content that is never more than it is, in whole per cent', () => {
    const { content, printable, postConsumer, preConsumer } = route.recycled;

    expect(postConsumer + preConsumer).toBeCloseTo(content, 12);
    expect(Number.isInteger(printable)).toBe(true);
    expect(printable / 100).toBeLessThanOrEqual(content + 1e-9);
    expect(printable / 100).toBeGreaterThan(content - 0.01);
  });
});

it('the virgin route has no recycled content and more wood; what its paper would else do in a landfill is nothing', () => {
  const [virgin, recovered] = found.routes;

  expect([virgin?.kind, recovered?.kind]).toEqual(['virgin', 'recovered']);
  expect(virgin?.recycled).toMatchObject({ content: 0, fibreOnly: 0, printable: 0 });
  expect(virgin?.wood).toBeGreaterThan(recovered?.wood ?? NaN);
  expect(virgin?.avoidedLandfill.amount).toBe(0);
  expect(recovered?.avoidedLandfill.amount).toBeGreaterThan(0);
});

it('the difference is the route compared less the base, in all and by scope', () => {
  const [virgin, recovered] = found.routes;

  expect(found.difference).toMatchObject({ base: 'virgin', with: 'recovered' });
  expect(found.difference.total).toBeCloseTo((recovered?.total ?? NaN) - (virgin?.total ?? NaN), 10);
  expect(sum(found.difference.scopes.map(({ amount }) => amount))).toBeCloseTo(found.difference.total, 8);
});

describe('a factor that somebody gave', () => {
  const changed = footprint(withFigure('carbon.grid', '0.5'));
  const grid = changed.routes[0]?.causes.find(({ id }) => id === 'power')?.factors[0];

  it('stands beside its cause with its own source, and no longer with the year of the default', () => {
    expect(grid).toMatchObject({
      id: 'carbon.grid',
      value: '0.5',
      year: '',
      status: 'read',
      source: 'Own meter, 2026',
    });
    expect(grid?.boundary).toBe('generation of electricity');
  });

  it('moves the cause it belongs to by exactly its worth', () => {
    const power = changed.routes[0]?.causes.find(({ id }) => id === 'power')?.amount;

    expect(power).toBeCloseTo(0.5 * (changed.routes[0]?.electricity ?? NaN), 9);
  });
});

it('tells scope 2 by contract only where there is a contract', () => {
  expect(found.routes.map(({ powerByContract }) => powerByContract)).toEqual([null, null]);
  expect([found.difference.scope2ByContract, found.difference.marginalPower]).toEqual([null, null]);

  const contract = footprint(withFigure('carbon.contract', '0.1'));
  for (const { powerByContract, electricity } of contract.routes)
    expect(powerByContract).toBeCloseTo(0.1 * electricity, 10);
  const market = contract.routes.map(({ scopes, causes, powerByContract, scope2ByContract }) => {
    const [byLocation, power] = [scopes[1]?.amount ?? NaN, causes.find(({ id }) => id === 'power')?.amount ?? NaN];
    expect(scope2ByContract?.amount).toBeCloseTo(byLocation - power + (powerByContract ?? NaN), 9);
    return scope2ByContract?.amount ?? NaN;
  });
  expect(contract.difference.scope2ByContract?.amount).toBeCloseTo((market[1] ?? NaN) - (market[0] ?? NaN), 9);
});

it('takes a contract only with a source, and only for the generation of electricity', () => {
  const [unsourced] = problemsOf(changeInput(open, 'carbon.contract', '0.1'));
  const told = { source: 'Contract, 2026', boundary: 'transport only' };

  expect(unsourced.kind).toBe('no source');
  expect(problemsOf(changeInput(open, 'carbon.contract', '0.1', told))[0]).toMatchObject({
    kind: 'wrong boundary',
    wanted: 'generation of electricity',
  });
});

it('tells what the difference in power moves on the grid where a marginal factor is known', () => {
  const french = valueOf(editStructure(open, { kind: 'set basis', basis: { grid: 'FRA' } }));
  const { marginalPower } = footprint(french).difference;

  expect(marginalPower).toEqual({
    amount: french.values.number('difference.footprint.marginalPower'),
    quantityId: 'difference.footprint.marginalPower',
  });
  expect(marginalPower?.amount).not.toBe(0);
});

it('takes a marginal factor of a region without one only with a source and the right boundary', () => {
  const told = { source: 'Study, 2026', boundary: 'losses and upstream of electricity' };
  const kinds = (more: object) =>
    problemsOf(changeInput(open, 'carbon.gridMarginal', '0.5', more)).map(({ kind }) => kind);

  expect(kinds({})).toEqual(['no source']);
  expect(kinds(told)).toEqual(['wrong boundary']);
  expect(footprint(withFigure('carbon.gridMarginal', '0.5')).difference.marginalPower).not.toBeNull();
});
