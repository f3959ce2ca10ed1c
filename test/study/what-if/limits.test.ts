import { describe, expect, it } from 'vitest';
import { type Limit, editStructure, limitReadings, openCase, problemSentence } from '../../../src/index.ts';
import { writeCase } from '../../../src/case/write-case.ts';
import { demonstration, problemsOf, valueOf } from '../../examples/demonstration.ts';
import { ashLimit, twoLines } from './two-lines.ts';

const open = demonstration();
const reading = (limit: Limit, figures: Readonly<Record<string, string>> = {}) =>
  limitReadings(twoLines([limit], figures)).find(({ route }) => route === 'mill');
const effluent = ashLimit('9', { id: 'water', label: 'Effluent', result: 'effluent', unit: 'm3/t' });

describe('a limit', () => {
  it('is read in its own unit: 1 % of ash beside 20 % of it, 40 % of the paper, makes 8.6 %', () => {
    // 0.01 + (0.20 - 0.01) x 0.40 = 0.086
    expect(reading(ashLimit('10'))?.value).toBeCloseTo(8.6, 10);
    expect(reading(ashLimit('0.1', { unit: '1' }))?.value).toBeCloseTo(0.086, 12);
  });

  it('is kept up to its very value, although 0.07 over 0.01 is a shade above 7 in binary fractions', () => {
    // Pulp without ash, paper with 17.5 %: 0.175 x 0.40 = 0.07.
    const figures = { 'material.pulp.ash': '0 %', 'material.paper.ash': '17.5 %' };

    expect(0.07 / 0.01).toBeGreaterThan(7);
    expect(reading(ashLimit('7'), figures)?.kept).toBe(true);
    expect(reading(ashLimit('7', { sense: 'at least' }), figures)?.kept).toBe(true);
    expect(reading(ashLimit('6.999999'), figures)?.kept).toBe(false);
    expect(reading(ashLimit('7.000001', { sense: 'at least' }), figures)?.kept).toBe(false);
  });

  it('counts over a running day or over a year, as its unit says', () => {
    const hours = { 'product.hours': '8000 h/a' };
    const perDay = reading({ ...effluent, unit: 'm3/d' }, hours);
    const perYear = reading({ ...effluent, unit: 'm3/a' }, hours);

    // 10 m3 a tonne; 100 000 t in 8000 h are 12.5 t an hour and 300 t a running day.
    expect(reading(effluent, hours)).toMatchObject({ per: 'tonne', value: 10, kept: false });
    expect(perDay).toMatchObject({ per: 'day', value: 3_000 });
    expect(perYear).toMatchObject({ per: 'year', value: 1_000_000 });
  });

  it('is watched in every route that has its result, or in the one it names', () => {
    const { route: _one, ...everywhere } = ashLimit('10');

    expect(limitReadings(twoLines([everywhere])).map(({ route }) => route)).toEqual(['mill', 'other']);
    expect(limitReadings(twoLines([ashLimit('10')])).map(({ routeLabel }) => routeLabel)).toEqual(['Mill']);
  });

  it('is the same whether hard or soft: what a breach means is for people to say', () => {
    const kinds = (['hard', 'soft'] as const).map((kind) => reading(ashLimit('5', { kind })));

    expect(kinds.map((each) => each?.kept)).toEqual([false, false]);
    expect(kinds.map((each) => each?.limit.kind)).toEqual(['hard', 'soft']);
  });

  it('is neither kept nor given a number where its result cannot be worked out', () => {
    // No price of paper in this currency: the cost is missing, the ash is not.
    const bare = valueOf(
      openCase(
        writeCase({
          ...open.content,
          limits: [{ ...ashLimit('2000'), id: 'cost', result: 'cost.total', route: 'virgin', unit: 'EUR/t' }],
          inputs: Object.fromEntries(Object.entries(open.content.inputs).filter(([id]) => id !== 'product.tonnes')),
        }),
      ),
    );
    const [cost] = limitReadings(bare);

    expect(bare.gaps.length).toBeGreaterThan(0);
    expect(cost).toMatchObject({ value: NaN, kept: false });
  });

  it('tells its unit by symbols, however a person spelt it', () => {
    const spelt = { ...ashLimit('9000'), id: 'tip', result: 'residue.all.wet.landfill', unit: 'wet tonnes per year' };
    const { route: _one, ...everywhere } = spelt;
    const put = valueOf(editStructure(open, { kind: 'put limit', limit: everywhere }));

    expect(limitReadings(put).find(({ limit }) => limit.id === 'tip')).toMatchObject({ unit: 'wet-t/a', per: 'year' });
  });
});

describe('a limit that cannot be', () => {
  it.each<{ what: string; limit: Limit; said: string }>([
    {
      what: 'a result that no route has',
      limit: ashLimit('8', { result: 'productAshes', route: 'virgin' }),
      said: '"limits.0.result": there is no result "productAshes"; there are "productAsh"',
    },
    {
      what: 'a unit of something else',
      limit: ashLimit('8', { unit: 'kWh/t', route: 'virgin' }),
      said: '"limits.0.unit": "kWh/t" was given; allowed is the unit of the result, 1 or %',
    },
    {
      what: 'a unit that is none',
      limit: ashLimit('8', { unit: '8 %%', route: 'virgin' }),
      said: '"limits.0.unit"',
    },
    {
      what: 'days that run backwards',
      limit: ashLimit('8', { from: '2028-01-01', until: '2027-12-31', route: 'virgin' }),
      said: '"limits.0.until": 2027-12-31 was given; allowed is no day before 2028-01-01.',
    },
    {
      what: 'a route that is not there',
      limit: ashLimit('8', { route: 'third' }),
      said: '"limits.0.route": there is no route "third"',
    },
    { what: 'a value in words', limit: ashLimit('eight', { route: 'virgin' }), said: '"limits.0.value"' },
    { what: 'a day of no calendar', limit: ashLimit('8', { until: 'May', route: 'virgin' }), said: 'a day such as' },
  ])('is refused in words: $what', ({ limit, said }) => {
    const problems = problemsOf(openCase(writeCase({ ...open.content, limits: [limit] })));

    expect(problems.map(problemSentence).join(' ')).toContain(said);
  });
});
