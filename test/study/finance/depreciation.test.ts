import { describe, expect, it } from 'vitest';
import {
  bookValueAfter,
  decliningBalance,
  straightLine,
  tableDepreciation,
} from '../../support/finance/depreciation.ts';

const sumOf = (charges: readonly number[]): number => charges.reduce((sum, charge) => sum + charge, 0);

function expectCharges(charges: readonly number[], expected: readonly number[]): void {
  expect(charges).toHaveLength(expected.length);
  charges.forEach((charge, year) => expect(charge, `year ${year + 1}`).toBeCloseTo(expected[year]!, 9));
}

describe('the straight line', () => {
  it('charges the same every year, down to the residual value', () => {
    expectCharges(straightLine(100, 4), [25, 25, 25, 25]);
    expectCharges(straightLine(100, 4, 20), [20, 20, 20, 20]);
  });
});

describe('the declining balance', () => {
  it('goes over to the straight line in the year in which that is larger', () => {
    // Factor 2 over 5 years is 40 % of the book: 400, 240, 144; the book is 216, of which 40 % are 86.4 and half are 108.
    expectCharges(decliningBalance(1000, 5), [400, 240, 144, 108, 108]);
  });

  it('never rounds its share', () => {
    // 2/7 of 7000 is 2000, of the remaining 5000 is 1428.571...; a share rounded to 0.286 would give 2002.
    expect(decliningBalance(7000, 7)[0]).toBeCloseTo(2000, 9);
    expect(decliningBalance(7000, 7)[1]).toBeCloseTo(10_000 / 7, 9);
  });

  it('stops at the residual value', () => {
    // 40 % of 1000 and of 600 are 400 and 240; of the 360 left only 60 stand above the residual 300.
    expectCharges(decliningBalance(1000, 5, 2, 300), [400, 240, 60, 0, 0]);
  });

  it('is the straight line at factor 1, and all at once at a factor of all years', () => {
    expectCharges(decliningBalance(100, 4, 1), [25, 25, 25, 25]);
    expectCharges(decliningBalance(100, 4, 4), [100, 0, 0, 0]);
    expectCharges(decliningBalance(100, 1), [100]);
  });

  it('charges the whole cost less the residual, whatever the years and the factor', () => {
    for (const years of [1, 2, 3, 7, 15, 40]) {
      for (const factor of [0.5, 1, 1.5, 2, 3]) {
        const charges = decliningBalance(1234.5, years, factor, 34.5);
        expect(sumOf(charges)).toBeCloseTo(1200, 8);
        expect(Math.min(...charges)).toBeGreaterThanOrEqual(0);
      }
    }
  });

  it.each([0, -3, 2.5, NaN])('refuses %f years, as the straight line does', (years) => {
    expect(() => decliningBalance(100, years)).toThrow(RangeError);
    expect(() => straightLine(100, years)).toThrow(RangeError);
  });
});

describe('a table of shares', () => {
  it('charges its shares of the cost', () => {
    const found = tableDepreciation(2000, [0.5, 0.3, 0.2]);

    expect(found.ok && found.charges).toEqual([1000, 600, 400]);
  });

  it('takes shares that add up to the whole but for the last digit of floating point', () => {
    expect(Array.from({ length: 10 }, () => 0.1).reduce((sum, share) => sum + share, 0)).not.toBe(1);
    expect(
      tableDepreciation(
        100,
        Array.from({ length: 10 }, () => 0.1),
      ).ok,
    ).toBe(true);
  });

  it('says what the shares add up to where that is not the whole', () => {
    expect(tableDepreciation(100, [0.5, 0.25])).toEqual({ ok: false, problem: 'not the whole', total: 0.75 });
    expect(tableDepreciation(100, [0.3333, 0.3333, 0.3333])).toMatchObject({ ok: false, problem: 'not the whole' });
    expect(tableDepreciation(100, [])).toEqual({ ok: false, problem: 'not the whole', total: 0 });
  });

  it('says in which year a share is below nothing or no number', () => {
    expect(tableDepreciation(100, [0.5, -0.1, 0.6])).toEqual({ ok: false, problem: 'below nothing', year: 2 });
    expect(tableDepreciation(100, [NaN])).toEqual({ ok: false, problem: 'below nothing', year: 1 });
  });
});

describe('the book value', () => {
  it('is the cost less the charges so far', () => {
    const charges = decliningBalance(1000, 5);

    expect([0, 1, 2, 3, 4, 5, 9].map((year) => bookValueAfter(1000, charges, year))).toEqual([
      1000, 600, 360, 216, 108, 0, 0,
    ]);
  });

  it('is the cost before the first year of use', () => {
    expect(bookValueAfter(1000, [400, 600], -1)).toBe(1000);
  });
});
