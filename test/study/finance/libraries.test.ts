import * as sheet from '@formulajs/formulajs';
import fc from 'fast-check';
import * as financial from 'financial';
import { describe, expect, it } from 'vitest';
import { capitalRecoveryFactor } from '../../support/finance/annuity.ts';
import { decliningBalance, straightLine, tableDepreciation } from '../../support/finance/depreciation.ts';
import { internalRates } from '../../../src/study/finance/internal-rates.ts';
import { modifiedRate } from '../../../src/study/finance/modified-rate.ts';
import { presentValue } from '../../../src/study/finance/present-value.ts';

// Two libraries that share no code with this program: functions of spreadsheets (formulajs 4.6.1) and a port of numpy-financial (financial 0.2.4).

const money = fc.double({ min: 1, max: 1e6, noNaN: true });
const rates = fc.double({ min: -0.3, max: 0.6, noNaN: true });
const lives = fc.integer({ min: 2, max: 30 });
const costs = fc.record({ cost: money, share: fc.double({ min: 0.01, max: 0.5, noNaN: true }), life: lives });
/** Money laid out at the start, returns later: one internal rate, which both libraries find. */
const plainPlans = fc
  .tuple(fc.double({ min: 0.2, max: 3, noNaN: true }), fc.array(money, { minLength: 2, maxLength: 30 }))
  .map(([share, returns]) => [-share * returns.reduce((sum, each) => sum + each, 0), ...returns]);
const anyPlans = fc.array(
  fc.oneof(
    money,
    money.map((each) => -each),
    fc.constant(0),
  ),
  { minLength: 2, maxLength: 31 },
);

function expectNear(found: unknown, expected: number, share = 1e-9): void {
  expect(Math.abs(Number(found) - expected)).toBeLessThanOrEqual(share * Math.max(Math.abs(expected), 1e-3));
}

const rateOf = (flows: readonly number[]): number => {
  const found = internalRates(flows).rates;
  expect(found).toHaveLength(1);
  return found[0]!.rate;
};

describe('present value, against libraries', () => {
  it('is the npv of financial, and the NPV of spreadsheets one year earlier', () => {
    fc.assert(
      fc.property(anyPlans, rates, (flows, rate) => {
        const size = presentValue(flows.map(Math.abs), rate);
        const found = presentValue(flows, rate);
        expect(Math.abs(financial.npv(rate, [...flows]) - found)).toBeLessThanOrEqual(1e-12 * size);
        // Spreadsheets divide the first flow too.
        expect(Math.abs(Number(sheet.NPV(rate, ...flows)) * (1 + rate) - found)).toBeLessThanOrEqual(1e-12 * size);
      }),
    );
  });
});

describe('internal rates, against libraries', () => {
  it('are the one rate that both find for money laid out first', () => {
    fc.assert(
      fc.property(plainPlans, (flows) => {
        const rate = rateOf(flows);
        // formulajs rounds its rates to ten decimals, stops at 1000 and cannot come nearer to -100 % than -0.99999999.
        expectNear(sheet.IRR(flows), rate, 1e-6);
        // financial has no brake on its steps of Newton: it is started near the rate, and ends when a step is below 1e-6.
        expectNear(financial.irr(flows, rate + 0.01, 1e-9), rate, 1e-7);
      }),
    );
  });

  it('hold more than libraries give: one rate of two, and a number where there is none', () => {
    const [two, none] = [
      [-100, 230, -132],
      [-100, 230, -133],
    ];
    const both = internalRates(two).rates.map(({ rate }) => rate);

    expect(both).toHaveLength(2);
    expectNear(financial.irr(two), both[0]!, 1e-5);
    expectNear(sheet.IRR(two), both[0]!, 1e-5);
    expect(internalRates(none).rates).toEqual([]);
    // financial runs away to infinity instead of saying that it is no number.
    expect(Number.isFinite(financial.irr(none))).toBe(false);
    // formulajs hands back where its search ended, although the present value is not nothing there.
    expect(Math.abs(presentValue(none, Number(sheet.IRR(none))))).toBeGreaterThan(0.1);
  });
});

describe('the modified rate, against libraries', () => {
  it('is that of financial for any plan, which says NaN where there is none', () => {
    fc.assert(
      fc.property(anyPlans, rates, rates, (flows, finance, reinvestment) => {
        const found = modifiedRate(flows, finance, reinvestment);
        const theirs = financial.mirr([...flows], finance, reinvestment);
        if (found === null) expect(theirs).toBeNaN();
        else expectNear(theirs, found);
      }),
    );
  });

  // formulajs strikes outlays out of the row of returns, so that later ones move up: it is right for one outlay at the start only.
  it('is that of spreadsheets for one outlay at the start', () => {
    fc.assert(
      fc.property(plainPlans, rates, rates, (flows, finance, reinvestment) => {
        expectNear(sheet.MIRR(flows, finance, reinvestment), modifiedRate(flows, finance, reinvestment) ?? NaN);
      }),
    );
  });
});

describe('the yearly payment, against libraries', () => {
  it('is PMT with the sign turned', () => {
    fc.assert(
      fc.property(money, rates, lives, (amount, rate, years) => {
        const found = amount * capitalRecoveryFactor(rate, years);
        // Both subtract powers that are nearly 1 where the rate is tiny, and lose what this function keeps.
        fc.pre(rate === 0 || Math.abs(rate) > 1e-4);
        expectNear(-Number(sheet.PMT(rate, years, amount)), found);
        expectNear(-financial.pmt(rate, years, amount), found);
      }),
    );
  });
});

describe('depreciation, against a library', () => {
  it('by the straight line is SLN', () => {
    fc.assert(
      fc.property(costs, ({ cost, share, life }) => {
        for (const charge of straightLine(cost, life, share * cost))
          expectNear(sheet.SLN(cost, share * cost, life), charge);
      }),
    );
  });

  it('by a table of falling shares is SYD', () => {
    fc.assert(
      fc.property(costs, ({ cost, share, life }) => {
        const digits = (life * (life + 1)) / 2;
        const found = tableDepreciation(
          cost * (1 - share),
          Array.from({ length: life }, (_, year) => (life - year) / digits),
        );
        expect(found.ok).toBe(true);
        if (!found.ok) return;
        found.charges.forEach((charge, year) => {
          expectNear(sheet.SYD(cost, share * cost, life, year + 1), charge);
        });
      }),
    );
  });

  // DDB and DB never go over to the straight line, so they are compared until that is the larger charge.
  function declineOnly(cost: number, residual: number, life: number, factor: number): readonly number[] {
    const charges = decliningBalance(cost, life, factor, residual);
    let book = cost;
    const end = charges.findIndex((charge) => {
      const declined = (book * factor) / life;
      book -= charge;
      return Math.abs(charge - declined) > 1e-9 * cost;
    });
    return end < 0 ? charges : charges.slice(0, end);
  }

  it('by the declining balance is DDB until the straight line takes over', () => {
    let compared = 0;
    fc.assert(
      fc.property(costs, fc.double({ min: 1.2, max: 2, noNaN: true }), ({ cost, share, life }, factor) => {
        declineOnly(cost, share * cost, life, factor).forEach((charge, year) => {
          compared += 1;
          expectNear(sheet.DDB(cost, share * cost, life, year + 1, factor), charge);
        });
      }),
    );
    expect(compared).toBeGreaterThan(300);
  });

  it('by the declining balance is DB at the share that DB has rounded to three decimals', () => {
    let compared = 0;
    fc.assert(
      fc.property(costs, ({ cost, share, life }) => {
        const rounded = Number((1 - share ** (1 / life)).toFixed(3));
        declineOnly(cost, share * cost, life, rounded * life).forEach((charge, year) => {
          compared += 1;
          expectNear(sheet.DB(cost, share * cost, life, year + 1), charge);
        });
      }),
    );
    expect(compared).toBeGreaterThan(300);
  });
});
