import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { breakEven } from '../../../src/study/break-even.ts';
import { type OpenCase, changeInput, openCase } from '../../../src/study/open-case.ts';
import { planResults } from '../../../src/study/investment/plan-results.ts';
import { editStructure } from '../../../src/study/edit-structure.ts';

// One project, six times: 40 million at time 0, a gross saving of 10 million a year less 2 million fixed, ten years, before tax. All figures
// are invented and all results worked by hand: nominal 10 % and inflation 2.5 % are 7.317073 % real, whose annuity over ten years is 6.921784.
const text = readFileSync(new URL('../../../examples/stories/s8.tonne', import.meta.url), 'utf8');

function opened(): OpenCase {
  const read = openCase(text);
  if (!read.ok) throw new Error(JSON.stringify(read.problems));
  return read.value;
}

function withFigures(open: OpenCase, figures: Readonly<Record<string, string>>): OpenCase {
  return Object.entries(figures).reduce((case_, [id, typed]) => {
    const changed = changeInput(case_, id, typed);
    if (!changed.ok) throw new Error(JSON.stringify(changed.problems));
    return changed.value;
  }, open);
}

function withPlan(open: OpenCase, changes: Partial<NonNullable<OpenCase['content']['investment']>>): OpenCase {
  const { investment } = open.content;
  const changed = editStructure(open, { kind: 'set investment', plan: { ...investment!, ...changes } });
  if (!changed.ok) throw new Error(JSON.stringify(changed.problems));
  return changed.value;
}

const millions = (open: OpenCase): string => (open.values.number('investment.npv') / 1e6).toFixed(3);
const internal = (open: OpenCase): string => ((planResults(open)?.internal?.rates[0]?.rate ?? NaN) * 100).toFixed(2);

const bare = opened();
const ramped = withFigures(bare, { 'investment.ramp.1': '60', 'investment.ramp.2': '90' });
const stocked = withFigures(ramped, { 'investment.workingCapital': '2000000' });
const cautious = withFigures(stocked, { 'investment.contingency': '15' });
const late = withFigures(withPlan(cautious, { years: 11 }), { 'investment.delay': '12' });

describe('one project', () => {
  test('is worth 15.374 million at the real rate, and as much in nominal money at the nominal one', () => {
    const nominal = withPlan(bare, { money: 'nominal' });

    expect(millions(bare)).toBe('15.374');
    expect(nominal.values.number('investment.npv')).toBeCloseTo(bare.values.number('investment.npv'), 2);
    const apart = nominal.values.number('investment.npv') / bare.values.number('investment.npv') - 1;
    expect(Math.abs(apart)).toBeLessThan(1e-9);
  });

  test('would be worth 9.157 million if constant prices were discounted at the nominal rate, which is wrong', () => {
    expect(millions(withFigures(bare, { 'capital.inflation': '0' }))).toBe('9.157');
  });

  test('is worth 10.779 with a ramp in which pulp fills the gap and the fixed cost is paid in full', () => {
    expect(millions(ramped)).toBe('10.779');
  });

  test('is worth 9.766 with working capital that comes back constant in real money', () => {
    expect(millions(stocked)).toBe('9.766');
    expect(withPlan(stocked, { money: 'nominal' }).values.number('investment.npv')).toBeCloseTo(
      stocked.values.number('investment.npv'),
      2,
    );
  });

  test('is worth 3.766 with a contingency of 15 %', () => {
    expect(millions(cautious)).toBe('3.766');
  });

  test('is worth 0.236 when it starts a year late and runs for ten years all the same', () => {
    expect(millions(late)).toBe('0.236');
  });

  test('has a real internal rate of 15.10 % bare and 12.47 % after the ramp', () => {
    expect(internal(bare)).toBe('15.10');
    expect(internal(ramped)).toBe('12.47');
  });

  // 57.79 a tonne beyond the 20 a tonne that the plant costs to have.
  test('breaks even at a saving of 5.778857 million a year, the capital charge of the statement', () => {
    const [turns] = breakEven(bare, 'investment.npv', 'virgin.charge.fibre')?.crossings ?? [];
    const { investment: _plan, ...content } = bare.content;
    const inStatement = openCase(
      JSON.stringify({
        format: 'tonne',
        version: 1,
        ...content,
        routes: content.routes.map((route) => ({ ...route, capital: 'annual charge' })),
        inputs: {
          ...Object.fromEntries(Object.entries(content.inputs).filter(([id]) => !id.startsWith('investment.'))),
          'recovered.capital': { value: '40000000', unit: 'EUR' },
          'recovered.capitalLife': { value: '10', unit: 'a' },
        },
      }),
    );
    if (!inStatement.ok) throw new Error(JSON.stringify(inStatement.problems));

    expect(((turns ?? NaN) - 20).toFixed(2)).toBe('57.79');
    expect((((turns ?? NaN) - 20) / 10).toFixed(6)).toBe('5.778857');
    expect(inStatement.value.values.number('recovered.cost.capital')).toBeCloseTo((turns ?? NaN) - 20, 6);
  });

  test('is not charged for twice: while there is a plan, the statement has no capital charge', () => {
    expect(bare.values.number('recovered.cost.capital')).toBe(0);
  });
});
