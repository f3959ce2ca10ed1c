import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { internalRates } from '../../../src/study/finance/internal-rates.ts';
import { presentValue } from '../../../src/study/finance/present-value.ts';
import { flowsWithRates, product } from './polynomials.ts';
import { sturmCount } from './sturm-count.ts';

const ratesOf = (flows: readonly number[]): readonly number[] => internalRates(flows).rates.map(({ rate }) => rate);

/** Up to 31 flows of either sign between 0.001 and 1e9, some of them nothing. */
const plans = fc.array(
  fc
    .tuple(fc.constantFrom(-1, 0, 1, 1, -1), fc.double({ min: -3, max: 9, noNaN: true }))
    .map(([sign, power]) => sign * 10 ** power),
  { minLength: 2, maxLength: 31 },
);

function signChanges(flows: readonly number[]): number {
  const signs = flows.filter((flow) => flow !== 0).map(Math.sign);
  return signs.filter((sign, place) => place > 0 && sign !== signs[place - 1]).length;
}

describe('internal rates of any plan', () => {
  it('are where the present value is nothing beside the flows it is made of', () => {
    fc.assert(
      fc.property(plans, (flows) => {
        for (const rate of ratesOf(flows).filter((each) => each > -0.99)) {
          const size = presentValue(flows.map(Math.abs), rate);
          expect(Math.abs(presentValue(flows, rate))).toBeLessThanOrEqual(1e-12 * size);
        }
      }),
      { numRuns: 300 },
    );
  });

  // Descartes' rule of signs: as many as the changes, or fewer by an even number.
  it('are never more than the changes of sign, and at least one where these are odd', () => {
    fc.assert(
      fc.property(plans, (flows) => {
        const found = ratesOf(flows);
        expect(found.length).toBeLessThanOrEqual(signChanges(flows));
        expect(found.length).toBeGreaterThanOrEqual(signChanges(flows) % 2);
      }),
      { numRuns: 300 },
    );
  });

  it('stay the same when all flows double, and nearly so when they are a thousandfold', () => {
    fc.assert(
      fc.property(plans, (flows) => {
        const found = ratesOf(flows);
        expect(ratesOf(flows.map((flow) => flow * 2))).toEqual(found);
        const thousandfold = ratesOf(flows.map((flow) => flow * 1000));
        expect(thousandfold).toHaveLength(found.length);
        thousandfold.forEach((rate, place) => {
          expect(Math.abs(rate - found[place]!)).toBeLessThanOrEqual(1e-9 * (1 + found[place]!));
        });
      }),
      { numRuns: 150 },
    );
  });

  it('turn over when the years are counted backwards: (1 + rate)(1 + backward rate) = 1', () => {
    fc.assert(
      fc.property(plans, (flows) => {
        const found = ratesOf(flows);
        const backwards = ratesOf(flows.toReversed()).toReversed();
        expect(backwards).toHaveLength(found.length);
        backwards.forEach((rate, place) => {
          // 1 + rate has lost digits where the rate is near -100 %: so many as that is small.
          const lost = 1e-9 + 1e-15 / (1 + rate) + 1e-15 / (1 + found[place]!);
          expect(Math.abs((1 + rate) * (1 + found[place]!) - 1)).toBeLessThanOrEqual(lost);
        });
      }),
      { numRuns: 150 },
    );
  });
});

describe('the number of internal rates', () => {
  const whole = fc.array(fc.integer({ min: -9, max: 9 }), { minLength: 2, maxLength: 31 });

  it('is that of the theorem of Sturm, worked in whole numbers', () => {
    fc.assert(
      fc.property(whole, (flows) => {
        fc.pre(flows.some((flow) => flow !== 0));
        expect(ratesOf(flows)).toHaveLength(sturmCount(flows));
      }),
      { numRuns: 300 },
    );
  });

  it('is so for double and triple rates too', () => {
    const factors = fc.record({
      out: fc.integer({ min: 1, max: 9 }),
      back: fc.integer({ min: 1, max: 9 }),
      times: fc.integer({ min: 2, max: 3 }),
    });
    fc.assert(
      fc.property(fc.array(factors, { minLength: 1, maxLength: 2 }), whole, ([...parts], rest) => {
        const few = rest.slice(0, 8);
        fc.pre(few.some((flow) => flow !== 0));
        const flows = parts.reduce<readonly number[]>(
          (sofar, { out, back, times }) =>
            Array.from({ length: times }).reduce<readonly number[]>((made) => product(made, [-out, back]), sofar),
          few,
        );
        expect(ratesOf(flows), JSON.stringify(flows)).toHaveLength(sturmCount(flows));
      }),
      { numRuns: 200 },
    );
  });
});

describe('plans made from their rates', () => {
  // Rates at least 2.5 % of (1 + rate) apart, on a grid of growth from 0.4 to 4, and a factor without positive roots.
  const grid = fc.uniqueArray(fc.integer({ min: -37, max: 56 }), { minLength: 1, maxLength: 4 });
  const factor = fc.array(fc.double({ min: 0.1, max: 10, noNaN: true }), { minLength: 1, maxLength: 12 });

  it('give those rates back, single ones and double ones', () => {
    fc.assert(
      fc.property(grid, factor, fc.boolean(), (steps, positive, isDouble) => {
        const rates = steps.map((step) => 1.025 ** step - 1).sort((a, b) => a - b);
        const made = isDouble ? [rates[0]!, ...rates] : rates;
        const flows = flowsWithRates(made, positive);
        const found = ratesOf(flows);
        // With a double rate counted twice the rule of signs still holds.
        expect(found.length + (isDouble ? 1 : 0)).toBeLessThanOrEqual(signChanges(flows));
        expect(found, JSON.stringify(made)).toHaveLength(rates.length);
        found.forEach((rate, place) => {
          expect(Math.abs((1 + rate) / (1 + rates[place]!) - 1)).toBeLessThanOrEqual(1e-6);
        });
      }),
      { numRuns: 300 },
    );
  });
});
