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
  readonly availability: number;
  readonly delay: number;
  readonly workingCapital: number;
  readonly tax: number;
  readonly laterTax: { readonly year: number; readonly rate: number };
  readonly life: number;
  readonly disposal: number;
  readonly growth: number;
  readonly index: { readonly year: number; readonly percent: number };
  readonly replacement: { readonly year: number; readonly money: number };
  readonly grant: number;
  readonly credit: number;
  readonly outageDays: number;
  readonly nominal: number;
  readonly inflation: number;
  readonly estimate: number;
  readonly tonnes: number;
  readonly margin: number;
  readonly instead: { readonly year: number; readonly money: number };
  readonly beside: number;
}

type Shape = Pick<InvestmentPlan, 'years' | 'depreciation' | 'losses'>;

function randomFigures(dice: Dice, years: number): Figures {
  return {
    outlays: [dice.whole(10, 60) * 1e6, dice.whole(0, 20) * 1e6],
    contingency: dice.whole(0, 25),
    ramp: [40, 50, 60, 70, 80].map((least) => dice.whole(least, 100)),
    availability: dice.whole(80, 100),
    delay: dice.whole(0, 20),
    workingCapital: dice.whole(0, 5) * 1e6,
    tax: dice.whole(0, 35),
    laterTax: { year: dice.whole(3, years), rate: dice.whole(0, 40) },
    life: dice.whole(3, 12),
    disposal: dice.whole(0, 4) * 1e6,
    growth: dice.whole(-3, 4),
    index: { year: dice.whole(3, years), percent: dice.whole(70, 140) },
    replacement: { year: dice.whole(3, years - 1), money: dice.whole(1, 5) * 1e6 },
    grant: dice.whole(0, 3) * 1e6,
    credit: dice.whole(0, 2) * 1e6,
    outageDays: dice.whole(0, 10),
    nominal: dice.whole(4, 14),
    inflation: dice.whole(0, 5),
    estimate: dice.whole(80, 150),
    tonnes: dice.whole(-2000, 1000),
    margin: dice.whole(50, 200),
    instead: { year: dice.whole(3, years), money: dice.whole(-2, 9) * 1e6 },
    beside: dice.whole(-1, 2) * 1e5,
  };
}

const supports = [
  { id: 'grant', label: 'Grant', kind: 'grant', first: 1, last: 1 },
  { id: 'credit', label: 'Credit', kind: 'credit', first: 3, last: 5 },
] as const;

function inProgram(plan: Partial<InvestmentPlan>, figures: Figures): { flows: readonly number[]; npv: number } {
  const given = (value: number, unit: string) => ({ value: String(value), unit });
  const text = JSON.stringify({
    ...story,
    investment: {
      from: 'virgin',
      to: 'recovered',
      start: '2027',
      operatesFrom: 2,
      items: [{ id: 'plant', label: 'Plant' }],
      supports,
      ...plan,
    },
    inputs: {
      ...story.inputs,
      'investment.item.plant.0': given(figures.outlays[0]!, 'EUR'),
      'investment.item.plant.1': given(figures.outlays[1]!, 'EUR'),
      'investment.contingency': given(figures.contingency, '%'),
      ...Object.fromEntries(
        figures.ramp.map((share, place) => [`investment.ramp.${String(place + 1)}`, given(share, '%')]),
      ),
      'investment.estimate': given(figures.estimate, '%'),
      'investment.moreTonnes': given(figures.tonnes, 't/a'),
      'investment.moreTonnes.4': given(500, 't/a'),
      'investment.margin': given(figures.margin, 'EUR/t'),
      'investment.margin.5': given(75, 'EUR/t'),
      [`investment.savingInstead.${String(figures.instead.year)}`]: given(figures.instead.money, 'EUR'),
      'investment.savingBeside.3': given(figures.beside, 'EUR'),
      'investment.availability': given(figures.availability, '%'),
      'investment.delay': given(figures.delay, '1'),
      'investment.workingCapital': given(figures.workingCapital, 'EUR'),
      'investment.taxRate': given(figures.tax, '%'),
      [`investment.taxRate.${String(figures.laterTax.year)}`]: given(figures.laterTax.rate, '%'),
      'investment.writeOffYears': given(figures.life, '1'),
      'investment.disposal': given(figures.disposal, 'EUR'),
      'investment.growth.other': given(figures.growth, '%'),
      [`investment.year.other.${String(figures.index.year)}`]: given(figures.index.percent, '%'),
      [`investment.replacement.${String(figures.replacement.year)}`]: given(figures.replacement.money, 'EUR'),
      'investment.support.grant': given(figures.grant, 'EUR'),
      'investment.support.credit': given(figures.credit, 'EUR'),
      'investment.outage.days': given(figures.outageDays, '1'),
      'investment.outage.contribution': given(40_000, 'EUR'),
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

/** How much of a year of the plan is operation, its first year, and how much of the planned stock it makes: counted month by month. */
function operation(figures: Figures, year: number): { on: number; begun: number; made: number } {
  let [on, begun, made] = [0, 0, 0];
  for (let month = 0; month < 12; month += 1) {
    const since = (year - 2) * 12 + month - figures.delay;
    if (since < 0) continue;
    on += 1 / 12;
    begun += since < 12 ? 1 / 12 : 0;
    made += (figures.ramp[Math.floor(since / 12)] ?? 100) / 100 / 12;
  }
  return { on, begun, made: (made * figures.availability) / 100 };
}

/** Nominal flows of the same plan, worked with plain numbers and schedules that share no code with the program. */
function byHand(plan: Shape, figures: Figures): readonly number[] {
  // Prices are of 2026, and year 0 is 2027.
  const prices = (year: number): number => (1 + figures.inflation / 100) ** (year + 1);
  const grown = (year: number): number => {
    const { year: from, percent } = figures.index;
    const growth = 1 + figures.growth / 100;
    return year < from ? growth ** year : (percent / 100) * growth ** (year - from);
  };
  const spent = figures.outlays.map(
    (outlay, year) => (outlay * (1 + figures.contingency / 100) * figures.estimate * prices(year)) / 100,
  );
  const grant = figures.grant * prices(1);
  const cost = spent.reduce((sum, each) => sum + each, 0) - grant;
  const renewed = figures.replacement.money * prices(figures.replacement.year);
  const schedule =
    plan.depreciation === 'straight line' ? straightLine(cost, figures.life) : decliningBalance(cost, figures.life);
  const renewal = straightLine(renewed, figures.life);
  const written = (year: number): number =>
    (schedule[year - 2] ?? 0) + (renewal[year - figures.replacement.year - 1] ?? 0);
  const years = Array.from({ length: plan.years + 1 }, (_, year) => year);
  const booked = years.reduce((sum, year) => sum + written(year), 0);
  const earned = years.map((year) => {
    if (year < 2) return 0;
    const { on, begun, made } = operation(figures, year);
    const credit = year >= 3 && year <= 5 ? figures.credit : 0;
    const outage = begun * figures.outageDays * 40_000;
    const saving = year === figures.instead.year ? figures.instead.money : (10e6 * made - 2e6 * on) * grown(year);
    const tonnes = year === 4 ? 500 : figures.tonnes * on;
    const gained = tonnes * (year === 5 ? 75 : figures.margin);
    return (saving + (year === 3 ? figures.beside : 0) + gained + credit - outage) * prices(year);
  });
  const disposal = figures.disposal * prices(plan.years);
  const profits = years.map(
    (year) => earned[year]! - written(year) + (year === plan.years ? disposal - (cost + renewed - booked) : 0),
  );
  const rates = years.map((year) => (year === figures.laterTax.year ? figures.laterTax.rate : figures.tax) / 100);
  const { taxes } = taxesOn(profits, rates, plan.losses);
  return years.map(
    (year) =>
      earned[year]! -
      (spent[year] ?? 0) +
      (year === 1 ? grant : 0) -
      (year === figures.replacement.year ? renewed : 0) -
      taxes[year]! -
      (year === 1 ? figures.workingCapital * prices(1) : 0) +
      (year === plan.years ? disposal + figures.workingCapital * prices(year) : 0),
  );
}

describe('a plan in the graph', () => {
  test('is what plain numbers make of it, real and nominal, for 60 random plans', () => {
    for (let seed = 1; seed <= 60; seed += 1) {
      const dice = new Dice(seed);
      const plan = {
        years: dice.whole(6, 20),
        depreciation: dice.pick(['straight line', 'declining balance'] as const),
        losses: dice.pick(['at once', 'carried forward'] as const),
      };
      const figures = randomFigures(dice, plan.years);
      const flows = byHand(plan, figures);
      // The present value is told in money of 2026.
      const expected = presentValue(flows, figures.nominal / 100) / (1 + figures.inflation / 100);
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
