import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import type { InvestmentPlan } from '../../../src/case/investment-plan.ts';
import { npvId } from '../../../src/study/investment/npv-id.ts';
import { planResults } from '../../../src/study/investment/plan-results.ts';
import { type OpenCase, openCase } from '../../../src/study/open-case.ts';
import { sensitivity } from '../../../src/study/sensitivity.ts';
import { uncertainty } from '../../../src/study/uncertainty/uncertainty.ts';
import { usualUncertainty } from '../../../src/study/uncertainty/usual-uncertainty.ts';
import { planVerdict } from '../../../src/wording/plan-verdict.ts';

interface Text {
  readonly investment: InvestmentPlan;
  readonly inputs: Readonly<Record<string, unknown>>;
}
const story = JSON.parse(readFileSync(new URL('../../../examples/stories/s8.tonne', import.meta.url), 'utf8')) as Text;
const mill = JSON.parse(readFileSync(new URL('../../../examples/plan.tonne', import.meta.url), 'utf8')) as Text;

type Given = Readonly<Record<string, readonly [string, string]>>;

function opened(text: Text, inputs: Given = {}, plan: Partial<InvestmentPlan> = {}, more: object = {}): OpenCase {
  const given = Object.fromEntries(Object.entries(inputs).map(([id, [value, unit]]) => [id, { value, unit }]));
  const read = openCase(
    JSON.stringify({
      ...text,
      ...more,
      investment: { ...text.investment, ...plan },
      inputs: { ...text.inputs, ...given },
    }),
  );
  if (!read.ok) throw new Error(JSON.stringify(read.problems));
  return read.value;
}

const row = ({ values }: OpenCase, name: string, year: number): number => {
  const id = `investment.${name}.${String(year)}`;
  return values.has(id) ? values.number(id) : 0;
};
const npv = ({ values }: OpenCase): number => values.number(npvId);
const verdict = (open: OpenCase): string =>
  planVerdict(planResults(open)!, { swings: sensitivity(open, npvId).judged, trials: null }, 'EUR', 'en');

describe('a ramp', () => {
  // 10 million x 55 % less 2 million in the fifth year of operation.
  it('goes on as long as somebody gives it', () => {
    const open = opened(story, { 'investment.ramp.5': ['55', '%'] });

    expect([4, 5, 6].map((year) => row(open, 'saving', year))).toEqual([8e6, 3.5e6, 8e6]);
  });

  it('takes the last year of the plan, and none after it', () => {
    expect(row(opened(story, { 'investment.ramp.10': ['0', '%'] }), 'saving', 10)).toBe(-2e6);
    expect(() => opened(story, { 'investment.ramp.11': ['0', '%'] })).toThrow(/unknown input/u);
  });
});

describe('a late start', () => {
  const outage: Given = { 'investment.outage.days': ['10', '1'], 'investment.outage.contribution': ['40000', 'EUR'] };
  const late = (months: string): Given => ({ ...outage, 'investment.delay': [months, '1'] });

  it('takes the outage along: 18 months late, half of it falls in each of two later years', () => {
    expect([1, 2].map((year) => row(opened(story, outage), 'outage', year))).toEqual([-4e5, 0]);
    expect([1, 2, 3, 4].map((year) => row(opened(story, late('18')), 'outage', year))).toEqual([0, -2e5, -2e5, 0]);
  });

  it('puts the release of pulp stock off, and gives back at the end no more than was tied up', () => {
    const stocks: Given = { 'investment.stock.pulp': ['30', '1'], 'investment.delay': ['12', '1'] };
    const [soon, later] = [opened(mill, { 'investment.stock.pulp': ['30', '1'] }), opened(mill, stocks)];

    // The mill's line runs from year 2: its stocks change in year 1, and a year later in year 2.
    expect(row(soon, 'working', 1)).toBeGreaterThan(0);
    expect(row(later, 'working', 1)).toBeCloseTo(0, 6);
    expect(row(later, 'working', 2)).toBeCloseTo(row(soon, 'working', 1), 6);
    expect(row(later, 'working', 15)).toBeCloseTo(-row(soon, 'working', 1), 6);
    // Stocks of a line that should run from year 9 of 10 would change in year 11: never.
    const never = opened(mill, { ...stocks, 'investment.delay': ['36', '1'] }, { years: 10, operatesFrom: 9 });
    for (const year of [8, 9, 10]) expect(row(never, 'working', year)).toBeCloseTo(0, 6);
  });

  it('leaves other working capital where it was laid out', () => {
    const tied: Given = { 'investment.workingCapital': ['2000000', 'EUR'], 'investment.delay': ['12', '1'] };

    expect(row(opened(story, tied), 'working', 0)).toBe(-2e6);
  });
});

describe('nominal money', () => {
  // Prices are of 2026: in a plan from 2030 the outlay of year 0 is 40 x 1.025^4 and the saving of year 1 is 8 x 1.025^5 million.
  it('rises from the price year, also when the plan begins later', () => {
    const open = opened(story, {}, { money: 'nominal', start: '2030' });

    expect(row(open, 'capital', 0)).toBeCloseTo(-40e6 * 1.025 ** 4, 3);
    expect(row(open, 'saving', 1)).toBeCloseTo(8e6 * 1.025 ** 5, 3);
  });

  it.each(['2020', '2026', '2027', '2035'])('is worth what real money is, taxed, in a plan from %s', (start) => {
    const taxed: Given = { 'investment.taxRate': ['25', '%'], 'investment.stock.pulp': ['20', '1'] };
    const [real, nominal] = (['real', 'nominal'] as const).map((money) => npv(opened(story, taxed, { money, start })));

    expect(Math.abs((nominal ?? NaN) / (real ?? NaN) - 1)).toBeLessThan(1e-9);
  });
});

describe('a saving that is typed', () => {
  const typed: Given = {
    'investment.savingInstead.3': ['1000000', 'EUR'],
    'investment.savingInstead.4': ['-500000', 'EUR'],
    'investment.savingBeside.6': ['250000', 'EUR'],
  };

  it('takes the place of the computed one, or adds to it, in its year only', () => {
    const open = opened(story, typed);

    expect([2, 3, 4, 5].map((year) => row(open, 'saving', year))).toEqual([8e6, 1e6, -5e5, 8e6]);
    expect([5, 6, 7].map((year) => row(open, 'flow', year))).toEqual([8e6, 8.25e6, 8e6]);
  });

  it('is named in the verdict, with its years', () => {
    expect(verdict(opened(story, typed))).toContain(
      'The saving of 2030 and 2031 was typed, in place of what the statements save. A further saving was typed for 2033.',
    );
    expect(verdict(opened(story))).not.toContain('typed');
  });
});

describe('tonnes gained or lost', () => {
  // 3000 t lost a year at 120, half of them in a first year that begins six months late; 1000 t gained at 90 in year 4.
  it('bring their margin while the line runs, and in a year of their own what is given for it', () => {
    const open = opened(story, {
      'investment.moreTonnes': ['-3000', 't/a'],
      'investment.moreTonnes.4': ['1000', 't/a'],
      'investment.margin': ['120', 'EUR/t'],
      'investment.margin.4': ['90', 'EUR/t'],
      'investment.delay': ['6', '1'],
    });

    expect([1, 2, 4, 5].map((year) => row(open, 'tonnes', year))).toEqual([-1.8e5, -3.6e5, 9e4, -3.6e5]);
  });

  it('are not worked out without a margin, and say what is missing', () => {
    const open = opened(story, { 'investment.moreTonnes': ['-3000', 't/a'] });

    expect(Number.isNaN(npv(open))).toBe(true);
    expect(open.gaps).toEqual([expect.objectContaining({ kind: 'no figure', id: 'investment.margin' })]);
  });
});

describe('the verdict beside the trials', () => {
  it('leaves out what is drawn and the bad years, which stand there, and nothing else', () => {
    const open = opened(mill);
    const doubts = { swings: sensitivity(open, npvId).judged, trials: uncertainty(open, npvId, { trials: 1024 }) };
    const told = (trialsStandBeside: boolean): string =>
      planVerdict(planResults(open)!, doubts, 'EUR', 'en', { trialsStandBeside });

    expect(told(false)).toMatch(/drawn anew each year.*Its worst year of operation/u);
    expect(told(true)).not.toMatch(/drawn anew each year|worst year/u);
    expect(told(true)).toMatch(/it ends above nothing in \d+ of 100.*What could undo it/u);
  });
});

describe('the class of an estimate', () => {
  const ranges = { '5': [50, 200], '4': [70, 150], '3': [80, 130], '2': [85, 120], '1': [90, 115] } as const;

  // Source: Recommended Practice 18R-97, AACE International, 2016, table of classes, outer ends; from memory.
  it.each(Object.entries(ranges))('%s gives the capital its range', (estimateClass, [low, high]) => {
    const found = planResults(opened(story, {}, { estimateClass: estimateClass as '5' }))?.estimate;

    expect(found).toEqual({ class: estimateClass, low, high, isOwn: false });
  });

  it('moves the present value in the swings by the capital, and is drawn where nobody says what is uncertain', () => {
    const open = opened(story, {}, { estimateClass: '4' });
    const swing = sensitivity(open, npvId).judged.find(({ id }) => id === 'investment.estimate');

    // Untaxed, 40 million that come to 28 to 60.
    expect((swing?.atLow ?? NaN) - npv(open)).toBeCloseTo(12e6, 3);
    expect((swing?.atHigh ?? NaN) - npv(open)).toBeCloseTo(-20e6, 3);
    expect(usualUncertainty(open, npvId).inputs['investment.estimate']).toMatchObject({ low: '70', high: '150' });
  });

  it('gives way to a range of the user', () => {
    const own = { ranges: { 'investment.estimate': { low: '95', high: '110' } } };
    const open = opened(story, {}, { estimateClass: '4' }, own);

    expect(planResults(open)?.estimate).toEqual({ class: '4', low: 95, high: 110, isOwn: true });
    expect(verdict(open)).toContain('By the range given for it, it may come to 38.0 to 44.0 million, which leaves');
  });

  it('stands in the verdict with its source, and without a class nothing does', () => {
    // 15.374 + 12 and 15.374 - 20.
    expect(verdict(opened(story, {}, { estimateClass: '4' }))).toContain(
      'As an estimate of class 4 (AACE 18R-97, from memory) it may come to 28.0 to 60.0 million, which leaves 27.4 to \u22124.6 of the present value.',
    );
    expect(planResults(opened(story))?.estimate).toBeNull();
  });
});
