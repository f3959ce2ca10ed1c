import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import type { InvestmentPlan } from '../../../src/case/investment-plan.ts';
import { type OpenCase, openCase } from '../../../src/study/open-case.ts';
import { problemSentence } from '../../../src/wording/problem-sentence.ts';

interface Text {
  readonly destinations: readonly { readonly id: string }[];
  readonly investment: InvestmentPlan;
  readonly inputs: Readonly<Record<string, unknown>>;
}
const textOf = (name: string): Text =>
  JSON.parse(readFileSync(new URL(`../../../examples/${name}.tonne`, import.meta.url), 'utf8')) as Text;
// Dry ash, so that it takes no water from the effluent.
const plan = textOf('plan');
const mill = { ...plan, inputs: { ...plan.inputs, 'residue.ash.dryness': { value: '100', unit: '%' } } };
const story = textOf('stories/s8');

type Shares = Readonly<Record<string, string>>;

function asked(text: Text, shares: Shares, plan: Partial<InvestmentPlan> = {}, more: object = {}) {
  const inputs = Object.fromEntries(Object.entries(shares).map(([id, value]) => [id, { value, unit: '%' }]));
  return openCase(
    JSON.stringify({
      ...text,
      ...more,
      investment: { ...text.investment, ...plan },
      inputs: { ...text.inputs, ...inputs },
    }),
  );
}

function opened(...given: Parameters<typeof asked>): OpenCase {
  const found = asked(...given);
  if (!found.ok) throw new Error(found.problems.map(problemSentence).join(' '));
  return found.value;
}

const row = ({ values }: OpenCase, name: string, year: number): number => {
  const id = `investment.${name}.${String(year)}`;
  return values.has(id) ? values.number(id) : 0;
};
const savedIn = (open: OpenCase, year: number): number => row(open, 'saving', year) + row(open, 'outlets', year);

const ofYears = {
  'investment.residue.coarse.to.boiler.6': '10',
  'investment.residue.fine.to.boiler.7': '80',
  'investment.residue.cleaner.to.scrap.4': '30',
  'investment.year.waste.5': '140',
  'investment.year.allocation.6': '20',
};
const closing = { outlets: [{ destination: 'landfill', first: 0, last: 8 }] };

describe('residues that go elsewhere from a year on', () => {
  const today = { 'investment.year.waste.5': '140', 'investment.year.allocation.6': '20' };
  const inYear4 = { ...today, 'residue.cleaner.to.scrap': '30' };
  const inYear6 = { ...inYear4, 'residue.coarse.to.boiler': '10' };
  const inYear7 = { ...inYear6, 'residue.fine.to.boiler': '80' };
  const inYear9 = {
    ...inYear7,
    'residue.rope.to.incineration': '80',
    'residue.junk.to.incineration': '100',
    'residue.cleaner.to.incineration': '70',
    'residue.ash.to.incineration': '100',
  };

  // The statement worked out anew with the shares of the year is the independent check of the difference that the plan adds.
  it.each([
    { year: 3, statement: today, ways: 'as today' },
    { year: 4, statement: inYear4, ways: 'to a buyer' },
    { year: 6, statement: inYear6, ways: 'less to the boiler, with less free allocation' },
    { year: 7, statement: inYear7, ways: 'more to the boiler, with its ash' },
    { year: 9, statement: inYear9, ways: 'away from a landfill that has closed' },
  ])('save in year $year what the statement saves with these shares: $ways', ({ year, statement }) => {
    const planned = opened(mill, ofYears, closing);
    const stated = opened(mill, statement);

    expect(savedIn(planned, year)).toBeCloseTo(savedIn(stated, year), 3);
    expect(row(planned, 'saving', year)).toBeCloseTo(row(opened(mill, today), 'saving', year), 3);
  });

  it('count the methane of an own landfill where it is under the price of carbon', () => {
    const owned = {
      destinations: mill.destinations.map((each) => (each.id === 'landfill' ? { ...each, owned: true } : each)),
      carbonPrice: { ownLandfill: true },
    };
    const planned = opened(mill, { 'investment.residue.fine.to.landfill.5': '60' }, {}, owned);
    const stated = opened(mill, { 'residue.fine.to.landfill': '60' }, {}, owned);

    expect(savedIn(planned, 5)).toBeCloseTo(savedIn(stated, 5), 3);
    expect(Math.abs(row(planned, 'outlets', 5))).toBeGreaterThan(1000);
  });

  it('are a row of their own, and none while nothing changes', () => {
    const { values } = opened(mill, {});

    expect([...Array(16).keys()].some((year) => values.has(`investment.outlets.${String(year)}`))).toBe(false);
  });

  it('still total the whole in every year', () => {
    const { values } = opened(mill, ofYears, closing);
    const shares = mill.destinations.map(({ id }) => `investment.outlet.rope.${id}.9`).filter((id) => values.has(id));

    expect(shares.reduce((sum, id) => sum + values.number(id), 0)).toBeCloseTo(1, 12);
    expect(values.number('investment.outlet.rope.landfill.9')).toBe(0);
    // The buyer keeps his fifth; what the landfill took goes to the first place that is paid for taking it.
    expect(values.number('investment.outlet.rope.scrap.9')).toBeCloseTo(0.2, 12);
    expect(values.number('investment.outlet.rope.incineration.9')).toBeCloseTo(0.8, 12);
  });
});

describe('an outlet that closes', () => {
  // The plant of the story made to lose 1 % more fibre: every wet tonne that no longer pays the 90 of the tip is saved from year 5 on.
  const lossy = { 'recovered.pulp.prepare.removal.fibre': '1.5' };

  it('is worked by hand: wet tonnes that it no longer takes, times 90', () => {
    const open = opened(story, lossy, { outlets: [{ destination: 'tip', first: 0, last: 4 }] });
    const wet = (route: string): number => open.values.number(`${route}.residue.cleaner.wet`);
    const less = (wet('recovered') - wet('virgin')) * 90 * 100_000;

    expect(less).toBeGreaterThan(10_000);
    expect(row(open, 'outlets', 4)).toBe(0);
    expect(row(open, 'outlets', 5)).toBeCloseTo(less, 6);
    expect(row(open, 'flow', 5) - row(open, 'flow', 4)).toBeCloseTo(less, 6);
  });

  it('is as good as today before it opens, if nothing goes there before', () => {
    const open = opened(story, lossy, { outlets: [{ destination: 'tip', first: 3, last: 10 }] });

    expect(row(open, 'outlets', 1)).toBeGreaterThan(0);
    expect(row(open, 'outlets', 3)).toBe(0);
  });

  it('is refused in words where nothing is open, with the stream and the year', () => {
    const found = asked(story, lossy, {
      outlets: [
        { destination: 'tip', first: 0, last: 6 },
        { destination: 'uncharged', first: 0, last: 4 },
      ],
    });

    expect(found.ok ? [] : found.problems.map(problemSentence)).toContain(
      'Cleaner rejects: in 2034 no destination of the plan is open to take it; let one take residues in that year.',
    );
  });

  it('is refused where it is no destination, stands twice, or lies outside the plan', () => {
    const sentences = (outlets: NonNullable<InvestmentPlan['outlets']>): readonly string[] => {
      const found = asked(story, {}, { outlets });
      return found.ok ? [] : found.problems.map(problemSentence);
    };

    expect(sentences([{ destination: 'sea', first: 0, last: 1 }])[0]).toMatch(/there is no destination "sea"/u);
    expect(sentences([{ destination: 'tip', first: 0, last: 11 }])[0]).toMatch(/a year from 0 to 10/u);
    expect(sentences([{ destination: 'tip', first: 4, last: 3 }])[0]).toMatch(/no year after the last/u);
    expect(
      sentences([
        { destination: 'tip', first: 0, last: 3 },
        { destination: 'tip', first: 4, last: 5 },
      ])[0],
    ).toMatch(/stands there twice/u);
  });

  it('fails in words, and in that year only, where shares of a year are more than the whole', () => {
    const open = opened(mill, {
      'investment.residue.rope.to.scrap.5': '60',
      'investment.residue.rope.to.spreading.5': '70',
    });

    expect(Number.isNaN(row(open, 'outlets', 5))).toBe(true);
    expect(row(open, 'outlets', 4)).toBe(0);
  });

  it('takes a share given for a stream or place that is not there for a mistake', () => {
    const found = asked(mill, { 'investment.residue.rope.to.sea.5': '60' });

    expect(found.ok ? [] : found.problems.map(problemSentence)[0]).toMatch(/There is no input/u);
  });
});
