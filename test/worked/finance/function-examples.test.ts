import { describe, expect, it } from 'vitest';
import { decliningBalance, straightLine, tableDepreciation } from '../../support/finance/depreciation.ts';
import { internalRates } from '../../../src/study/finance/internal-rates.ts';
import { modifiedRate } from '../../../src/study/finance/modified-rate.ts';
import { presentValue } from '../../../src/study/finance/present-value.ts';

describe('present value by two conventions', () => {
  // Source: numpy-financial, documentation strings of npv and irr in _financial.py (Gitman 2003 cited there): the first flow is not divided.
  it('of 40,000 against 5000, 8000, 12,000 and 30,000 at 8 % is 3065.22267', () => {
    expect(presentValue([-40_000, 5000, 8000, 12_000, 30_000], 0.08).toFixed(5)).toBe('3065.22267');
  });

  // NPV of spreadsheets and forms divides the first flow too: nothing stands in year 0.
  it.each([
    // Source: NPV, FormCalc reference, Adobe, undated, examples.
    { flows: [500, 1500, 4000, 10_000], rate: 0.1, printed: '11529.60863329007' },
    // Source: NPV function, MESCIUS Spread documentation, undated, example.
    { flows: [-10_000, 3000, 3400, 7700], rate: 0.065, printed: '2055.38' },
  ])('of $flows a year later at $rate is $printed', ({ flows, rate, printed }) => {
    expect(presentValue([0, ...flows], rate).toFixed(printed.split('.')[1]?.length)).toBe(printed);
  });
});

describe('the internal rate', () => {
  it.each([
    // Source: IRR function, Microsoft Support, Excel function reference, undated, example table; more digits derived.
    { flows: [-70_000, 12_000, 15_000, 18_000, 21_000, 26_000], printed: ['0.087', '0.0866309'] },
    { flows: [-70_000, 12_000, 15_000, 18_000, 21_000], printed: ['-0.021', '-0.0212448'] },
    { flows: [-70_000, 12_000, 15_000], printed: ['-0.444', '-0.4435069'] },
    // Source: function IRR, LibreOffice Help, Financial Functions Part One, The Document Foundation; more digits derived.
    { flows: [-10_000, 3500, 7600, 1000], printed: ['0.1133', '0.1133210'] },
    // Source: numpy-financial, documentation strings of irr in _financial.py.
    { flows: [-100, 39, 59, 55, 20], printed: ['0.28095'] },
    { flows: [-100, 0, 0, 74], printed: ['-0.0955'] },
    { flows: [-100, 100, 0, 7], printed: ['0.06206'] },
  ])('of $flows is $printed', ({ flows, printed }) => {
    const { rates } = internalRates(flows);

    expect(rates).toHaveLength(1);
    for (const digits of printed) expect(rates[0]?.rate.toFixed(digits.split('.')[1]?.length)).toBe(digits);
  });

  // The same documentation gives one rate of each, the one nearest nothing, where the plan has more.
  it.each([
    // y^3 - y^2 + 0.07 = 0 for y = 1 + rate: besides 0.9167 also 0.3211 (and -0.238, below -100 %).
    { flows: [-100, 100, 0, -7], printed: '-0.0833', all: ['-0.6789', '-0.0833'] },
    { flows: [-5, 10.5, 1, -8, 1], printed: '0.0886', all: ['-0.8702', '0.0886', '0.7096'] },
  ])('of $flows is $printed, and not it alone', ({ flows, printed, all }) => {
    const found = internalRates(flows).rates.map(({ rate }) => rate);

    expect(found.map((rate) => rate.toFixed(4))).toEqual(all);
    expect([...found].sort((a, b) => Math.abs(a) - Math.abs(b))[0]?.toFixed(4)).toBe(printed);
    for (const rate of found) expect(presentValue(flows, rate)).toBeCloseTo(0, 9);
  });
});

describe('the modified rate', () => {
  const five = [-120_000, 39_000, 30_000, 21_000, 37_000, 46_000];

  it.each([
    // Source: MIRR function, Microsoft Support, Excel function reference, undated, example table, printed in whole per cent; more digits derived.
    { flows: five, finance: 0.1, reinvestment: 0.12, printed: ['0.13', '0.1260941'] },
    { flows: five.slice(0, 4), finance: 0.1, reinvestment: 0.12, printed: ['-0.05', '-0.0480447'] },
    { flows: five, finance: 0.1, reinvestment: 0.14, printed: ['0.13', '0.1347591'] },
    // Source: function MIRR, LibreOffice Help, Financial Functions Part Two, The Document Foundation; more digits derived.
    { flows: [-5, 10, 15, 8], finance: 0.5, reinvestment: 0.1, printed: ['0.9416', '0.9416474'] },
  ])('of $flows at $finance and $reinvestment is $printed', ({ flows, finance, reinvestment, printed }) => {
    const found = modifiedRate(flows, finance, reinvestment);

    for (const digits of printed) expect(found?.toFixed(digits.split('.')[1]?.length)).toBe(digits);
  });
});

describe('depreciation', () => {
  // Source: SLN function, Microsoft Support, Excel function reference, undated, example: (30,000 - 7500)/10.
  it('of 30,000 to 7500 in ten years by the straight line is 2250 a year', () => {
    expect(new Set(straightLine(30_000, 10, 7500))).toEqual(new Set([2250]));
  });

  // Source: function DDB, LibreOffice Help, Financial Functions Part One, The Document Foundation; more digits derived.
  it('of 75,000 to 1 in 60 months at factor 2 is 1721.81 in the twelfth', () => {
    // 75,000 (1 - 2/60)^11 x 2/60. DDB never goes over to the straight line; here that happens after month 30.
    const charges = decliningBalance(75_000, 60, 2, 1);

    expect(charges[11]?.toFixed(2)).toBe('1721.81');
    expect(charges[11]?.toFixed(4)).toBe('1721.8059');
    expect(charges.findIndex((charge, month) => charge === charges[month + 1])).toBeGreaterThanOrEqual(30);
  });

  // Source: function SYD, the same help, part one. Its shares are 5/15 to 1/15 of what is above the residual value.
  it('of 50,000 to 10,000 in five years by falling shares is 13,333.33 to 2666.67', () => {
    const found = tableDepreciation(
      40_000,
      [5, 4, 3, 2, 1].map((left) => left / 15),
    );

    expect(found.ok && found.charges.map((charge) => charge.toFixed(2))).toEqual([
      '13333.33',
      '10666.67',
      '8000.00',
      '5333.33',
      '2666.67',
    ]);
  });

  // Source: function DB, the same help, part one: 25,000 to 1000 in 36 periods, six months in the first: 1075.00.
  it('by a balance that falls by the share 0.086, half a year of it, is 1075.00; this program does not round the share', () => {
    // DB rounds 1 - (1000/25,000)^(1/36) = 0.0855 to 0.086 before it uses it. Given that share, half of the first whole charge is the printed one.
    const share = 1 - (1000 / 25_000) ** (1 / 36);
    const [rounded] = decliningBalance(25_000, 36, 0.086 * 36, 1000);
    const [exact] = decliningBalance(25_000, 36, share * 36, 1000);

    expect(share.toFixed(3)).toBe('0.086');
    expect(((rounded ?? NaN) / 2).toFixed(2)).toBe('1075.00');
    expect((exact ?? NaN) / 2).toBeCloseTo((25_000 * share) / 2, 9);
    expect(1075 - (exact ?? NaN) / 2).toBeGreaterThan(5);
  });
});
