import { describe, expect, it } from 'vitest';
import { changeInput, footprint } from '../../src/index.ts';
import { demonstration, valueOf } from '../examples/demonstration.ts';

const given = demonstration();
const routeOf = (open: typeof given, id: string) => {
  const found = footprint(open).routes.find((route) => route.id === id);
  if (found === undefined) throw new Error(`No route ${id}`);
  return found;
};
const sum = (figures: readonly number[]): number => figures.reduce((all, figure) => all + figure, 0);
const wasteCauses = ['burned', 'ownLandfill', 'landfill', 'incineration', 'spreading', 'wasteFreight'];

describe.each(['virgin', 'recovered'])('what leaves the %s route', (id) => {
  const route = routeOf(given, id);
  const spared = (id === 'recovered' ? route.heatFromResidues : 0) / given.values.number('boiler.efficiency');
  const ofFuel = given.values.number('carbon.fuel') + given.values.number('carbon.fuelUpstream');

  it('emits, stream by stream, what the causes of the footprint say, less the fuel that its heat spares', () => {
    const caused = sum(route.causes.filter((cause) => wasteCauses.includes(cause.id)).map(({ amount }) => amount));

    expect(sum(route.streams.map(({ carbon }) => carbon))).toBeCloseTo(caused - spared * ofFuel, 9);
  });

  it('costs, stream by stream, what the statement says of residues, tax, sales and heat', () => {
    const keys = [...route.streams.map(({ stream }) => `residues.${stream}`), 'residues.landfillTax'];
    const charged = sum(keys.map((key) => given.values.number(`${id}.cost.${key}`)));
    const credited = sum(['credits.sales', 'credits.energy'].map((key) => given.values.number(`${id}.cost.${key}`)));

    expect(sum(route.streams.map(({ cost }) => cost))).toBeCloseTo(charged + credited, 9);
  });

  it('is the same mass by stream and by destination, wet and dry', () => {
    for (const kind of ['wet', 'dry'] as const) {
      expect(sum(route.streams.map((stream) => stream[kind]))).toBeCloseTo(route.waste[kind], 12);
      expect(sum(route.waste.destinations.map((each) => each[kind]))).toBeCloseTo(route.waste[kind], 12);
    }
  });

  it('takes as much electricity and heat by use as in all', () => {
    expect(sum(route.energy.map(({ electricity }) => electricity))).toBeCloseTo(route.electricity, 9);
    expect(sum(route.energy.map(({ heat }) => heat))).toBeCloseTo(route.heat, 12);
  });
});

it('moves cost and carbon of a stream with its way, and nothing of the others', () => {
  const before = routeOf(given, 'recovered');
  const after = routeOf(valueOf(changeInput(given, 'residue.rope.to.boiler', '50')), 'recovered');
  const of = (route: typeof before, stream: string) => route.streams.find((each) => each.stream === stream);

  expect(of(after, 'rope')?.cost).toBeLessThan(of(before, 'rope')?.cost ?? NaN);
  expect(of(after, 'rope')?.carbon).not.toBeCloseTo(of(before, 'rope')?.carbon ?? NaN, 3);
  expect(of(after, 'fine')).toEqual(of(before, 'fine'));
});
