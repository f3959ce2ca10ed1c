import { describe, expect, it } from 'vitest';
import { internalRates } from '../../../src/study/finance/internal-rates.ts';
import { flowsWithRates } from './polynomials.ts';

const ratesOf = (flows: readonly number[]): readonly number[] => internalRates(flows).rates.map(({ rate }) => rate);

function expectRates(flows: readonly number[], expected: readonly number[]): void {
  const found = ratesOf(flows);
  expect(found, JSON.stringify(flows)).toHaveLength(expected.length);
  found.forEach((rate, place) => {
    expect(Math.abs(rate - expected[place]!)).toBeLessThanOrEqual(1e-12 * (1 + expected[place]!));
  });
}

describe('internal rates', () => {
  it.each([
    // With y = 1 + rate: 100 y^2 - 230 y + 132 = 100 (y - 1.1)(y - 1.2).
    { plan: 'two rates', flows: [-100, 230, -132], rates: [0.1, 0.2] },
    // 1000 (y - 1.1)(y - 1.2)(y - 1.3) = 1000 y^3 - 3600 y^2 + 4310 y - 1716.
    { plan: 'three rates', flows: [-1000, 3600, -4310, 1716], rates: [0.1, 0.2, 0.3] },
    // 100 (y - 1.1)^2 = 100 y^2 - 220 y + 121: it touches nothing and turns back.
    { plan: 'a double rate, once', flows: [-100, 220, -121], rates: [0.1] },
    {
      plan: 'a double rate of flows with rounded last digits',
      flows: [-100, 200 * 1.1, -100 * 1.1 * 1.1],
      rates: [0.1],
    },
    { plan: 'a double rate of decimal flows between noughts', flows: [0, -0.1, 0.22, -0.121, 0], rates: [0.1] },
    { plan: 'the rate nothing', flows: [-100, 50, 50], rates: [0] },
    { plan: 'the rate nothing of flows that decimals round', flows: [-0.3, 0.1, 0.2], rates: [0] },
    { plan: 'a rate far above 100 %', flows: [-1, 1e6], rates: [999_999] },
    { plan: 'a loss of nearly all', flows: [-1000, 0, 0.4], rates: [-0.98] },
    { plan: 'noughts at both ends', flows: [0, 0, -100, 110, 0, 0], rates: [0.1] },
    // A borrower's plan: money first.
    { plan: 'a loan', flows: [100, -60, -60], rates: [(0.6 + Math.sqrt(0.36 + 2.4)) / 2 - 1] },
  ])('finds $plan', ({ flows, rates }) => expectRates(flows, rates));

  it.each([
    { plan: 'money that only comes', flows: [100, 100] },
    { plan: 'money that only goes', flows: [-100] },
    // 230^2 - 4 x 100 x 133 = -300: the parabola stays on one side.
    { plan: 'a turn that stays below nothing', flows: [-100, 230, -133] },
    { plan: 'a turn that stays below nothing by a hair', flows: [-100, 220, -121.000_000_1] },
  ])('finds none for $plan, and does not call that always', ({ flows }) => {
    expect(internalRates(flows)).toEqual({ rates: [], always: false });
  });

  it('tells two rates apart that differ by a millionth', () => {
    const found = ratesOf(flowsWithRates([0.1, 0.100_001]));

    expect(found).toHaveLength(2);
    // The last digit of a flow moves them by the square root of what it is worth: 1e-16 / 1e-6.
    expect(found[0]).toBeCloseTo(0.1, 8);
    expect(found[1]).toBeCloseTo(0.100_001, 8);
  });

  it('takes three rates for one that rounding cannot tell apart', () => {
    // Between them the present value is at most about (1e-5)^3 = 1e-15 of its terms.
    const found = ratesOf(flowsWithRates([0.1, 0.100_01, 0.100_02]));

    expect(found).toHaveLength(1);
    expect(found[0]).toBeCloseTo(0.100_01, 6);
  });

  it.each([3, 5, 10, 20, 30])('finds a rate once that is a root %i times over', (times) => {
    expectRates(flowsWithRates(Array.from({ length: times }, () => 0.1)), [0.1]);
  });

  it('finds two double rates beside each other, and a triple one between single ones', () => {
    expectRates(flowsWithRates([0.1, 0.1, 0.5, 0.5]), [0.1, 0.5]);
    expectRates(flowsWithRates([-0.5, 0.25, 0.25, 0.25, 3]), [-0.5, 0.25, 3]);
  });

  it('gives the rate nothing as nothing, not as the last digit that rounding leaves', () => {
    expect(ratesOf([-0.06, 0.01, 0.05])).toEqual([0]);
  });

  it('holds for every rate where no money flows', () => {
    expect(internalRates([0, 0, 0])).toEqual({ rates: [], always: true });
    expect(internalRates([])).toEqual({ rates: [], always: true });
  });

  it('calls rates below -99 % meaningless, and the others not', () => {
    // Roots by construction just below and just above -99 %, and at 10 %.
    const { rates } = internalRates(flowsWithRates([-0.991, -0.989, 0.1]));

    expect(rates.map(({ isMeaningless }) => isMeaningless)).toEqual([true, false, false]);
    expect(rates[0]!.rate).toBeCloseTo(-0.991, 12);
  });

  it('leaves out a rate that no number tells from -100 %', () => {
    expect(ratesOf([-1e9, 1e-3])).toEqual([1e-12 - 1]);
    expect(ratesOf([-1e9, 1e-12])).toEqual([]);
  });

  it('refuses flows that are no numbers instead of saying that there is no rate', () => {
    expect(() => internalRates([-100, NaN])).toThrow(RangeError);
    expect(() => internalRates([-100, Infinity])).toThrow(RangeError);
  });
});
