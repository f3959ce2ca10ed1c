import { describe, expect, it } from 'vitest';
import { annuityFactor, capitalRecoveryFactor } from '../../support/finance/annuity.ts';
import { levelisedCost } from '../../../src/study/finance/levelised-cost.ts';
import { modifiedRate } from '../../../src/study/finance/modified-rate.ts';
import { payback } from '../../../src/study/finance/payback.ts';
import { presentValue } from '../../../src/study/finance/present-value.ts';
import { profitabilityIndex } from '../../../src/study/finance/profitability-index.ts';
import { realRate } from '../../../src/study/finance/real-rate.ts';
import { nominalRate } from '../../support/finance/nominal-rate.ts';

describe('present value', () => {
  it('leaves the first flow as it is and divides each later one once more', () => {
    // 100 + 110/1.1 + 121/1.21 = 300.
    expect(presentValue([100, 110, 121], 0.1)).toBeCloseTo(300, 12);
  });

  it('is the plain sum at no rate, nothing for no flows, and larger than the sum below no rate', () => {
    expect(presentValue([-100, 60, 60], 0)).toBe(20);
    expect(presentValue([], 0.1)).toBe(0);
    // At -50 % a year's wait doubles: 1 + 2 + 4.
    expect(presentValue([1, 1, 1], -0.5)).toBe(7);
  });

  it.each([-1, -2, NaN])('is no number at the rate %f', (rate) => {
    expect(presentValue([1, 1], rate)).toBeNaN();
  });
});

describe('the annuity factor', () => {
  it('is the present value of 1 at the end of each year', () => {
    for (const rate of [-0.5, -0.01, 0, 0.03, 0.1, 2]) {
      expect(annuityFactor(rate, 7)).toBeCloseTo(presentValue([0, 1, 1, 1, 1, 1, 1, 1], rate), 10);
    }
  });

  it('is the number of years at no rate, and keeps its digits just beside it', () => {
    expect(annuityFactor(0, 16)).toBe(16);
    expect(capitalRecoveryFactor(0, 16)).toBe(0.0625);
    // For small r the factor is n - r n (n + 1)/2: at ten years 10 - 55 r.
    expect(annuityFactor(1e-9, 10)).toBeCloseTo(10 - 55e-9, 14);
    expect(annuityFactor(-1e-9, 10)).toBeCloseTo(10 + 55e-9, 14);
  });

  it('takes parts of years, and is no number at -100 %', () => {
    // (1 - 1.21^-0.5)/0.21 = (1 - 1/1.1)/0.21.
    expect(annuityFactor(0.21, 0.5)).toBeCloseTo((1 - 1 / 1.1) / 0.21, 14);
    expect(annuityFactor(-1, 10)).toBeNaN();
    expect(capitalRecoveryFactor(-1, 10)).toBeNaN();
  });
});

describe('the modified rate', () => {
  it('grows returns to the last year and brings outlays to the first', () => {
    // Outlays 100 + 55/1.1 = 150; returns 200 x 1.2 + 360 = 600; two years from first to last after one: (600/150)^(1/3) - 1.
    expect(modifiedRate([-100, -55, 200, 360], 0.1, 0.2)).toBeCloseTo(4 ** (1 / 3) - 1, 14);
  });

  it('counts noughts at the end as years', () => {
    // 100 grows by 10 % to 110 in the second year: (110/100)^(1/2).
    expect(modifiedRate([-100, 100, 0], 0.05, 0.1)).toBeCloseTo(1.1 ** 0.5 - 1, 14);
  });

  it('is none without outlays or without returns', () => {
    expect(modifiedRate([100, 100], 0.1, 0.1)).toBeNull();
    expect(modifiedRate([-100, 0, -100], 0.1, 0.1)).toBeNull();
    expect(modifiedRate([], 0.1, 0.1)).toBeNull();
  });
});

describe('the profitability index', () => {
  it('is 1 where the present value is nothing, and adds what each unit of capital wins', () => {
    expect(profitabilityIndex([-100, 110], [100], 0.1)).toBeCloseTo(1, 14);
    // Capital 100 + 110/1.1 = 200; flows -100 + 0 + 242/1.21 = 100: 1 + 100/200.
    expect(profitabilityIndex([-100, 0, 242], [100, 110], 0.1)).toBeCloseTo(1.5, 14);
  });

  it('is none where no capital is laid out', () => {
    expect(profitabilityIndex([10, 10], [0, 0], 0.1)).toBeNull();
  });
});

describe('the levelised cost', () => {
  it('is the price per tonne at which sales and costs have one present value', () => {
    const [costs, tonnes] = [
      [5000, 300, 300, 450],
      [0, 10, 20, 20],
    ];
    const price = levelisedCost(costs, tonnes, 0.08) ?? NaN;
    const flows = costs.map((cost, year) => price * tonnes[year]! - cost);

    expect(presentValue(flows, 0.08)).toBeCloseTo(0, 9);
    // At no rate total costs over total tonnes: 6050/50.
    expect(levelisedCost(costs, tonnes, 0)).toBeCloseTo(121, 12);
  });

  it('is none where no tonnes are made', () => {
    expect(levelisedCost([100], [0], 0.1)).toBeNull();
  });
});

describe('real and nominal rates', () => {
  it('turn into each other', () => {
    // 1.05 x 1.02 = 1.071.
    expect(nominalRate(0.05, 0.02)).toBeCloseTo(0.071, 15);
    expect(realRate(0.071, 0.02)).toBeCloseTo(0.05, 15);
    expect(realRate(0.04, 0.04)).toBe(0);
    // Falling prices: 1/0.95 - 1.
    expect(realRate(0, -0.05)).toBeCloseTo(1 / 0.95 - 1, 15);
  });

  it('are no number where prices fall by everything', () => {
    expect(realRate(0.1, -1)).toBeNaN();
    expect(nominalRate(0.1, -1)).toBeNaN();
  });
});

describe('a plan with a figure that is no number', () => {
  it('has no number for an answer, instead of none', () => {
    expect(modifiedRate([NaN, 100], 0.1, 0.1)).toBeNaN();
    expect(modifiedRate([-100, 100], -1, 0.1)).toBeNaN();
    expect(profitabilityIndex([-100, 110], [NaN], 0.1)).toBeNaN();
    expect(levelisedCost([100], [NaN], 0.1)).toBeNaN();
    expect(payback([-100, NaN, 200])).toBeNaN();
  });
});
