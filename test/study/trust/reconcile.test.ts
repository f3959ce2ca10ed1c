import { describe, expect, it } from 'vitest';
import { type OpenCase, caseText, editStructure, openCase, reconcile } from '../../../src/index.ts';
import { cautionsOf } from '../../../src/study/warnings.ts';
import { problemsOf, valueOf } from '../../examples/demonstration.ts';
import { after, open } from '../edited.ts';

const rowOf = (from: OpenCase, result: string) =>
  reconcile(from)
    .flatMap(({ rows }) => rows)
    .find((row) => row.result === result);
const measured = (result: string, value: string, unit: string, from: OpenCase = open): OpenCase =>
  after({ kind: 'put actual', actual: { result, value, unit, period: '2025', source: 'Meter' } }, from);
const power = 'virgin.electricity.total';

describe('what is offered to be held against the books', () => {
  it('is eight figures, the base route before the others', () => {
    const groups = reconcile(open);

    expect(groups.map(({ route }) => route)).toEqual([null, 'virgin', 'recovered']);
    expect(groups[0]?.rows.map(({ result }) => result)).toEqual(['product.tonnes']);
    expect(groups[1]?.rows.map(({ result, unit }) => [result, unit])).toEqual([
      ['virgin.fibreBought', 'bdt/t'],
      ['virgin.electricity.total', 'kWh/t'],
      ['virgin.heat.total', 'GJ/t'],
      ['virgin.rejectsHauled', 'wet-t/t'],
      ['virgin.sludgeHauled', 'wet-t/t'],
      ['virgin.water.effluent', 'm3/t'],
      ['virgin.cost.chemicals', 'EUR/t'],
    ]);
  });

  it('follows the route that others are held against', () => {
    const turned = after({ kind: 'compare routes', base: 'recovered', with: 'virgin' });

    expect(reconcile(turned).map(({ route }) => route)).toEqual([null, 'recovered', 'virgin']);
  });

  it('adds fibre, rejects and sludge up from their parts', () => {
    const of = (id: string): number => open.values.number(id);
    const wet = (streams: readonly string[]): number =>
      streams.reduce((sum, stream) => sum + of(`recovered.residue.${stream}.wet`), 0);

    expect(of('recovered.fibreBought')).toBeCloseTo(
      ['bskp', 'bhkp', 'bctmp', 'supermarket', 'mixed'].reduce(
        (sum, id) => sum + (open.values.has(`recovered.bought.${id}`) ? of(`recovered.bought.${id}`) : 0),
        0,
      ),
      12,
    );
    expect(of('recovered.rejectsHauled')).toBeCloseTo(wet(['rope', 'junk', 'coarse', 'fine', 'cleaner', 'broke']), 12);
    expect(of('recovered.sludgeHauled')).toBeCloseTo(wet(['primary', 'biological']), 12);
  });
});

describe('a measured figure', () => {
  // 5 % either way is told by the definition (computed - measured)/measured, worked backwards from what is computed.
  it.each([
    { share: 1.04, isWide: false },
    { share: 1.06, isWide: true },
    { share: 0.96, isWide: false },
    { share: 0.94, isWide: true },
  ])('where the computed one is $share of it is wide: $isWide', ({ share, isWide }) => {
    const computed = open.values.number(power);
    const row = rowOf(measured(power, String(computed / share), 'kWh/t'), power);

    expect(row?.actual?.gap).toBeCloseTo(share - 1, 9);
    expect(row?.actual?.isWide).toBe(isWide);
    expect(cautionsOf(measured(power, String(computed / share), 'kWh/t')).some(({ kind }) => kind === 'wide gap')).toBe(
      isWide,
    );
  });

  it('may be that of a year, in a larger unit: 96,000 t of it', () => {
    const computed = open.values.number(power);
    const row = rowOf(measured(power, '90000', 'MWh/a'), power);

    expect(row?.actual?.computed).toBeCloseTo((computed * 96_000) / 1000, 6);
    expect(row?.actual?.gap).toBeCloseTo((computed * 96) / 90_000 - 1, 12);
  });

  it('of nothing has no gap, and is not wide', () => {
    expect(rowOf(measured(power, '0', 'kWh/t'), power)?.actual).toMatchObject({ gap: NaN, isWide: false });
  });

  it('can stand beside any result', () => {
    const row = rowOf(measured('difference.total', '-70', 'EUR/t'), 'difference.total');

    expect(row?.actual?.gap).toBeCloseTo((open.values.number('difference.total') + 70) / 70, 12);
  });

  it('fits nothing: no figure of the case changes', () => {
    const from = measured(power, '1', 'kWh/t');

    expect(from.values.exact('difference.total')).toBe(open.values.exact('difference.total'));
    expect(from.content.inputs).toEqual(open.content.inputs);
  });

  it('is kept in the case, replaced by another, and gone without a trace once removed', () => {
    const twice = measured(power, '900', 'kWh/t', measured(power, '800', 'kWh/t'));

    expect(valueOf(openCase(caseText(twice))).content.actuals).toEqual([
      { result: power, value: '900', unit: 'kWh/t', period: '2025', source: 'Meter' },
    ]);
    expect(caseText(after({ kind: 'remove actual', result: power }, twice))).toBe(caseText(open));
  });

  it('stays with a route that gets another name, and goes with one that is removed', () => {
    const from = measured(power, '900', 'kWh/t', measured('recovered.heat.total', '8', 'GJ/t'));
    const renamed = after({ kind: 'rename route', route: 'virgin', label: 'Old route' }, from);
    const three = after({ kind: 'duplicate route', route: 'virgin' }, from);

    expect(renamed.content.actuals).toHaveLength(2);
    expect(after({ kind: 'remove route', route: 'recovered' }, three).content.actuals).toEqual([
      { result: power, value: '900', unit: 'kWh/t', period: '2025', source: 'Meter' },
    ]);
  });

  it('of what the case does not have, or in another kind of unit, is refused by name', () => {
    const put = (result: string, unit: string) =>
      problemsOf(editStructure(open, { kind: 'put actual', actual: { result, value: '1', unit } }));

    expect(put('virgin.electricity.totl', 'kWh/t')).toMatchObject([
      { kind: 'unknown reference', path: 'actuals.0.result', known: expect.arrayContaining([power]) as unknown },
    ]);
    expect(put(power, 'GJ/t')).toMatchObject([{ kind: 'wrong form', path: 'actuals.0.unit', given: '"GJ/t"' }]);
    expect(put(power, 'ton')).toMatchObject([{ kind: 'wrong form', path: 'actuals.0.unit' }]);
  });
});
