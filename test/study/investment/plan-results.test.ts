import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { planResults } from '../../../src/study/investment/plan-results.ts';
import { startPlan } from '../../../src/study/investment/start-plan.ts';
import { type OpenCase, openCase } from '../../../src/study/open-case.ts';
import { rateWords } from '../../../src/wording/plan-verdict.ts';

const read = (name: string): string => readFileSync(new URL(`../../../examples/${name}`, import.meta.url), 'utf8');

function opened(text: string): OpenCase {
  const outcome = openCase(text);
  if (!outcome.ok) throw new Error(JSON.stringify(outcome.problems));
  return outcome.value;
}

interface Plan {
  readonly investment: Readonly<Record<string, unknown>>;
  readonly inputs: Readonly<Record<string, unknown>>;
}

/** A case with other figures and another shape of its plan. */
function changed(
  name: string,
  plan: Readonly<Record<string, unknown>>,
  figures: Readonly<Record<string, string>>,
): OpenCase {
  const content = JSON.parse(read(name)) as Plan;
  const unitOf = (id: string): string =>
    /taxRate|writtenOff|year\.|contingency|growth|inflation/u.test(id) ? '%' : /charge/u.test(id) ? 'EUR/t' : 'EUR';
  const given = Object.entries(figures).map(([id, value]) => [id, { value, unit: unitOf(id) }] as const);
  return opened(
    JSON.stringify({
      ...content,
      investment: { ...content.investment, ...plan },
      inputs: { ...content.inputs, ...Object.fromEntries(given) },
    }),
  );
}

const wordsOf = (open: OpenCase): string => rateWords(planResults(open) ?? { internal: null }, 'en');

describe('internal rates of a plan', () => {
  // Flows -1, +2.3, -1.32 in millions have the rates 10 % and 20 %: -1 + 2.3/1.1 - 1.32/1.21 = 0, and the same at 1.2. The saving of the story
  // is 100 a tonne less 2 million: 43 a tonne leaves 2.3 million in year 1, and what a replacement takes in year 2 makes -1.32 of it.
  test('are named, both of them, where there are two', () => {
    const open = changed(
      'stories/s8.tonne',
      { years: 2 },
      {
        'investment.item.plant.0': '1000000',
        'virgin.charge.fibre': '43',
        'investment.replacement.2': '3620000',
        'capital.inflation': '0',
      },
    );

    expect(planResults(open)?.flows).toEqual([-1e6, 2.3e6, -1.32e6]);
    expect(wordsOf(open)).toBe('it has 2 internal rates of return, 10.00 % and 20.00 %, so none of them ranks it');
  });

  test('are said to be none where there is none', () => {
    const open = changed('stories/s8.tonne', {}, { 'virgin.charge.fibre': '5' });

    expect(planResults(open)?.flows.every((flow) => flow < 0)).toBe(true);
    expect(wordsOf(open)).toBe('it has no internal rate of return');
    expect(planResults(open)).toMatchObject({ payback: null, discountedPayback: null, modified: null });
  });
});

describe('a plan', () => {
  test('writes off by its own table, and takes what is left of the capital off the last profit', () => {
    const open = changed(
      'stories/s8.tonne',
      { years: 3, depreciation: 'table' },
      {
        'investment.writtenOff.1': '50',
        'investment.writtenOff.2': '30',
        'investment.taxRate': '25',
        'capital.inflation': '0',
      },
    );

    // Profits 8 - 20, 8 - 12 and 8 - 0 - 8 left: -12, -4, 0. Losses are carried forward, so there is no tax at all.
    const tax = planResults(open)
      ?.rows.find(({ id }) => id === 'tax')
      ?.values.map(Math.abs);
    expect(tax).toEqual([0, 0, 0, 0]);
  });

  test('pays for carbon beyond an allocation that shrinks', () => {
    const before = opened(read('plan.tonne'));
    const after = changed('plan.tonne', {}, { 'investment.year.allocation.5': '0' });
    const saving = (open: OpenCase, year: number): number => open.values.number(`investment.saving.${String(year)}`);
    const priced = (route: string): number => before.values.number(`${route}.carbon.priced`);
    const payable = (route: string): number => before.values.number(`${route}.carbon.payable`);

    expect(saving(after, 4)).toBe(saving(before, 4));
    // Without any allocation a route pays for all that is priced; both routes have more of it than they are given for nothing.
    const more = (route: string): number => priced(route) - payable(route);
    const price = before.values.number('price.carbon') / 1000;
    const expected = (more('virgin') - more('recovered')) * price * 96_000 * 0.97;
    const risen = 1.03 ** 5;
    expect(saving(after, 5) - saving(before, 5)).toBeCloseTo(expected * risen, 2);
  });

  test('begins with the capital of the line, in the year after the prices', () => {
    const started = startPlan(opened(read('demonstration.tonne')));

    if (!started.ok) throw new Error(JSON.stringify(started.problems));
    expect(planResults(started.value)).toMatchObject({ outlay: 46_000_000, plan: { start: '2025', operatesFrom: 1 } });
    expect(started.value.values.number('recovered.cost.capital')).toBe(0);
  });

  test('is none where the case has none', () => {
    expect(planResults(opened(read('demonstration.tonne')))).toBeNull();
  });

  test('tells outlay and replacements apart', () => {
    const results = planResults(opened(read('plan.tonne')));

    expect((results?.outlay ?? NaN) / 1e6).toBeCloseTo(35.6 * 1.16, 9);
    expect(results?.rows.find(({ id }) => id === 'renewal')?.values[10]).toBe(-2_400_000);
  });
});
