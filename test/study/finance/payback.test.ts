import { describe, expect, it } from 'vitest';
import { payback } from '../../../src/study/finance/payback.ts';

describe('payback', () => {
  it.each([
    // The sums of each line stand behind it.
    { plan: 'within a year', flows: [-100, 40, 40, 40], years: 2.5 }, // -100, -60, -20, 20: 2 + 20/40
    { plan: 'at the end of a year', flows: [-100, 50, 50, 10], years: 2 },
    { plan: 'only at the very end', flows: [-100, 50, 50], years: 2 },
    { plan: 'the last time the sum turns', flows: [-100, 150, -80, 60], years: 2.5 }, // -100, 50, -30, 30: 2 + 30/60
    { plan: 'after a first year that brought money', flows: [50, -100, 60], years: 1 + 50 / 60 }, // 50, -50, 10
    { plan: 'from the first money, not from the first year', flows: [0, 0, -100, 40, 40, 40], years: 2.5 },
    { plan: 'over a year without flow', flows: [-100, 0, 200], years: 1.5 }, // -100, -100, 100: 1 + 100/200
    { plan: 'never out of pocket', flows: [100, -100, 10], years: 0 },
    { plan: 'no flows', flows: [0, 0], years: 0 },
  ])('$plan: $years years', ({ flows, years }) => {
    expect(payback(flows)).toBeCloseTo(years, 12);
  });

  it.each([
    { plan: 'the money never comes back', flows: [-100, 40, 40] },
    { plan: 'it is lost again at the end', flows: [-100, 150, -80] },
    { plan: 'the end falls below a start that was never below', flows: [100, 0, -101] },
  ])('is none where $plan', ({ flows }) => {
    expect(payback(flows)).toBeNull();
  });

  it('discounts each flow by its own year', () => {
    // 110/1.1 = 100 and 121/1.21 = 100: sums -150, -50, 50: 1 + 50/100.
    expect(payback([-150, 110, 121], 0.1)).toBeCloseTo(1.5, 12);
    // Two years of waiting ahead divide all by one factor and move nothing.
    expect(payback([0, 0, -150, 110, 121], 0.1)).toBeCloseTo(1.5, 12);
    expect(payback([-150, 110, 55], 0.1)).toBeNull();
  });

  it('takes what rounding leaves of a sum for nothing', () => {
    // -0.1 - 0.2 is -0.30000000000000004 in floating point, and 0.3 does not bring that back.
    expect(-0.1 - 0.2 + 0.3).toBeLessThan(0);
    expect(payback([-0.1, -0.2, 0.3])).toBe(2);
    // -100 + 10/1.1 + ... + 110/1.1^5 is nothing at the rate that the plan earns.
    expect(payback([-100, 10, 10, 10, 10, 110], 0.1)).toBeCloseTo(5, 12);
  });

  it('is no number at -100 %', () => {
    expect(payback([-100, 200], -1)).toBeNaN();
  });
});
