import { describe, expect, it } from 'vitest';
import { annuityFactor, capitalRecoveryFactor } from '../../support/finance/annuity.ts';
import { internalRates } from '../../../src/study/finance/internal-rates.ts';
import { levelisedCost } from '../../../src/study/finance/levelised-cost.ts';
import { payback } from '../../../src/study/finance/payback.ts';
import { presentValue } from '../../../src/study/finance/present-value.ts';
import { profitabilityIndex } from '../../../src/study/finance/profitability-index.ts';
import { realRate } from '../../../src/study/finance/real-rate.ts';
import { nominalRate } from '../../support/finance/nominal-rate.ts';

// One project, six times: 40 million now, 10 million a year saved less 2 million of fixed cost, ten years, before tax and financing; 10 % nominal,
// 2.5 % inflation. All figures are invented and in millions; answers were worked by hand beforehand.

const years = 10;
const [nominal, inflation] = [0.1, 0.025];
const real = realRate(nominal, inflation);

interface Plan {
  readonly outlay: number;
  /** Share of the planned recovered stock made in each year; pulp fills the rest, and fixed cost stands in full. */
  readonly made: readonly number[];
  /** Working capital, back with the last year. */
  readonly working: number;
  /** Years from the money to the start. */
  readonly late: number;
}

const full = Array.from({ length: years }, () => 1);
const ramped = [0.6, 0.9, ...full.slice(2)];
const bare: Plan = { outlay: 40, made: full, working: 0, late: 0 };

function flowsOf({ outlay, made, working, late }: Plan): readonly number[] {
  const waiting = Array.from({ length: late }, () => 0);
  const flows = [-outlay - working, ...waiting, ...made.map((share) => 10 * share - 2)];
  return flows.map((flow, year) => (year === flows.length - 1 ? flow + working : flow));
}

const worth = (plan: Plan): string => presentValue(flowsOf(plan), real).toFixed(3);
const percentOf = (plan: Plan): readonly string[] =>
  internalRates(flowsOf(plan)).rates.map(({ rate }) => (100 * rate).toFixed(2));

describe('the project of story S8', () => {
  it('is asked for 7.317073 % in real money, and ten years of 1 are worth 6.921784', () => {
    expect((100 * real).toFixed(6)).toBe('7.317073');
    expect(annuityFactor(real, years).toFixed(6)).toBe('6.921784');
  });

  it('is worth 15.374, where the nominal rate on constant prices would say 9.157', () => {
    // 8 x 6.921784 - 40; wrong: 8 x 6.144567 - 40.
    expect(worth(bare)).toBe('15.374');
    expect(presentValue(flowsOf(bare), nominal).toFixed(3)).toBe('9.157');
  });

  it('is worth the same in money of the day at the nominal rate', () => {
    const ofTheDay = flowsOf(bare).map((flow, year) => flow * (1 + inflation) ** year);

    expect(presentValue(ofTheDay, nominal)).toBeCloseTo(presentValue(flowsOf(bare), real), 9);
  });

  it.each([
    { step: 'with 60 and 90 % made in the first years', plan: { ...bare, made: ramped }, expected: '10.779' },
    { step: 'with 2 of working capital besides', plan: { ...bare, made: ramped, working: 2 }, expected: '9.766' },
    {
      step: 'with 15 % contingency besides',
      plan: { ...bare, outlay: 46, made: ramped, working: 2 },
      expected: '3.766',
    },
    {
      step: 'with a start a year late besides, and ten years of operation',
      plan: { outlay: 46, made: ramped, working: 2, late: 1 },
      expected: '0.236',
    },
  ])('is worth $expected $step', ({ plan, expected }) => {
    expect(worth(plan)).toBe(expected);
  });

  it('earns 15.10 % in real money, and 12.47 % after the ramp', () => {
    expect(percentOf(bare)).toEqual(['15.10']);
    expect(percentOf({ ...bare, made: ramped })).toEqual(['12.47']);
    // In money of the day the same plan earns (1.1510 x 1.025 - 1) by Fisher.
    const ofTheDay = flowsOf(bare).map((flow, year) => flow * (1 + inflation) ** year);
    expect(internalRates(ofTheDay).rates[0]?.rate).toBeCloseTo(
      nominalRate(internalRates(flowsOf(bare)).rates[0]?.rate ?? NaN, inflation),
      12,
    );
  });

  it('breaks even at 5.778857 a year, the capital charge of the statement: 57.79 a tonne', () => {
    const charge = 40 * capitalRecoveryFactor(real, years);

    expect(charge.toFixed(6)).toBe('5.778857');
    expect(presentValue([-40, ...full.map(() => charge)], real)).toBeCloseTo(0, 12);
    // 100,000 t a year: 5.778857 million are 57.79 a tonne, and so is the levelised cost of the capital alone.
    const levelised = levelisedCost([40e6, ...full.map(() => 0)], [0, ...full.map(() => 100_000)], real);
    expect(levelised?.toFixed(2)).toBe('57.79');
  });

  it('pays back in 5 years, and in more when it is discounted; each unit of capital brings 1.384', () => {
    // 40/8. Discounted: 8 annuity(n) = 40 at n = -ln(1 - 5 r)/ln(1 + r) = 6.45; straight within the seventh year it is a little more.
    expect(payback(flowsOf(bare))).toBe(5);
    const discounted = payback(flowsOf(bare), real) ?? NaN;
    const smooth = -Math.log1p(-5 * real) / Math.log1p(real);
    expect(Math.floor(discounted)).toBe(Math.floor(smooth));
    expect(Math.abs(discounted - smooth)).toBeLessThan(0.02);
    // 1 + 15.374/40.
    expect(profitabilityIndex(flowsOf(bare), [40], real)?.toFixed(3)).toBe('1.384');
  });
});
