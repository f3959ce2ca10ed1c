import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import type { InvestmentPlan } from '../../src/case/investment-plan.ts';
import { presentValue } from '../../src/study/finance/present-value.ts';
import { openCase } from '../../src/study/open-case.ts';
import { Dice } from '../support/dice.ts';
import { decliningBalance, straightLine } from '../support/finance/depreciation.ts';
import { taxesOn } from '../support/finance/tax.ts';

// The story saves 100 a tonne on 100,000 tonnes and costs 2 million a year to have; both routes are alike in all else.
const story = JSON.parse(readFileSync(new URL('../../examples/stories/s8.tonne', import.meta.url), 'utf8')) as Story;
interface Story {
  readonly inputs: Readonly<Record<string, { readonly value: string; readonly unit: string }>>;
}

interface Figures {
  readonly outlays: readonly number[];
  readonly contingency: number;
  readonly ramp: readonly number[];
  readonly workingCapital: number;
  readonly tax: number;
  readonly life: number;
  readonly disposal: number;
  readonly growth: number;
  readonly nominal: number;
  readonly inflation: number;
}

function randomFigures(dice: Dice): Figures {
  return {
    outlays: [dice.whole(10, 60) * 1e6, dice.whole(0, 20) * 1e6],
    contingency: dice.whole(0, 25),
    ramp: [dice.whole(40, 100), dice.whole(60, 100), dice.whole(80, 100)],
    workingCapital: dice.whole(0, 5) * 1e6,
    tax: dice.whole(0, 35),
    life: dice.whole(3, 12),
    disposal: dice.whole(0, 4) * 1e6,
    growth: dice.whole(-3, 4),
    nominal: dice.whole(4, 14),
    inflation: dice.whole(0, 5),
  };
}

function inProgram(plan: Partial<InvestmentPlan>, figures: Figures) {
  const given = (value: number, unit: string) => ({ value: String(value), unit });
  const text = JSON.stringify({
    ...story,
    investment: { start: '2027', operatesFrom: 2, money: 'real', items: [{ id: 'plant', label: 'Plant' }], ...plan },
    inputs: {
      ...story.inputs,
      'investment.item.plant.0': given(figures.outlays[0]!, 'EUR'),
      'investment.item.plant.1': given(figures.outlays[1]!, 'EUR'),
      'investment.contingency': given(figures.contingency, '%'),
      'investment.ramp.1': given(figures.ramp[0]!, '%'),
      'investment.ramp.2': given(figures.ramp[1]!, '%'),
      'investment.ramp.3': given(figures.ramp[2]!, '%'),
      'investment.workingCapital': given(figures.workingCapital, 'EUR'),
      'investment.taxRate': given(figures.tax, '%'),
      'investment.writeOffYears': given(figures.life, '1'),
      'investment.disposal': given(figures.disposal, 'EUR'),
      'investment.growth.other': given(figures.growth, '%'),
      'capital.rate': given(figures.nominal, '%'),
      'capital.inflation': given(figures.inflation, '%'),
    },
  });
  const opened = openCase(text);
  if (!opened.ok) throw new Error(JSON.stringify(opened.problems));
  const { values, content } = opened.value;
  const years = Array.from({ length: (content.investment?.years ?? 0) + 1 }, (_, year) => year);
  return {
    flows: years.map((year) => values.number(`investment.flow.${String(year)}`)),
    npv: values.number('investment.npv'),
  };
}

/** Nominal flows of the same plan, worked with plain numbers and schedules that share no code with the program. */
function byHand(plan: Pick<InvestmentPlan, 'years' | 'depreciation' | 'losses'>, figures: Figures): readonly number[] {
  const prices = (year: number): number => (1 + figures.inflation / 100) ** year;
  const spent = figures.outlays.map((outlay, year) => outlay * (1 + figures.contingency / 100) * prices(year));
  const cost = spent.reduce((sum, each) => sum + each, 0);
  const schedule =
    plan.depreciation === 'straight line' ? straightLine(cost, figures.life) : decliningBalance(cost, figures.life);
  const written = (year: number): number => schedule[year - 2] ?? 0;
  const booked = schedule.slice(0, plan.years - 1).reduce((sum, each) => sum + each, 0);
  const years = Array.from({ length: plan.years + 1 }, (_, year) => year);
  const saving = years.map((year) => {
    if (year < 2) return 0;
    const made = (figures.ramp[year - 2] ?? 100) / 100;
    return (10e6 * made - 2e6) * (1 + figures.growth / 100) ** year * prices(year);
  });
  const disposal = figures.disposal * prices(plan.years);
  const profits = years.map(
    (year) => saving[year]! - written(year) + (year === plan.years ? disposal - (cost - booked) : 0),
  );
  const { taxes } = taxesOn(profits, figures.tax / 100, plan.losses);
  return years.map(
    (year) =>
      saving[year]! -
      (spent[year] ?? 0) -
      taxes[year]! -
      (year === 1 ? figures.workingCapital * prices(1) : 0) +
      (year === plan.years ? disposal + figures.workingCapital * prices(year) : 0),
  );
}

describe('a plan in the graph', () => {
  test('is what plain numbers make of it, real and nominal, for 60 random plans', () => {
    for (let seed = 1; seed <= 60; seed += 1) {
      const dice = new Dice(seed);
      const figures = randomFigures(dice);
      const plan = {
        years: dice.whole(6, 20),
        depreciation: dice.pick(['straight line', 'declining balance'] as const),
        losses: dice.pick(['at once', 'carried forward'] as const),
      };
      const flows = byHand(plan, figures);
      const expected = presentValue(flows, figures.nominal / 100);
      const size = flows.reduce((sum, flow) => sum + Math.abs(flow), 0);

      const nominal = inProgram({ ...plan, money: 'nominal' }, figures);
      const real = inProgram({ ...plan, money: 'real' }, figures);

      nominal.flows.forEach((flow, year) => {
        expect(Math.abs(flow - flows[year]!) / size, `seed ${String(seed)}, year ${String(year)}`).toBeLessThan(1e-12);
      });
      expect(Math.abs(nominal.npv - expected) / size, `seed ${String(seed)}, nominal`).toBeLessThan(1e-12);
      expect(Math.abs(real.npv - nominal.npv) / size, `seed ${String(seed)}, real`).toBeLessThan(1e-12);
    }
  });
});
