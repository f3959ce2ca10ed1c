import { describe, expect, it } from 'vitest';
import { annuityFactor, capitalRecoveryFactor } from '../../support/finance/annuity.ts';
import { presentValue } from '../../../src/study/finance/present-value.ts';
import { realRate } from '../../../src/study/finance/real-rate.ts';
import { nominalRate } from '../../support/finance/nominal-rate.ts';

describe('the capital recovery factor', () => {
  // Source: "Annual Capital Recovery Factors", table 1.0, Engineers Edge, undated.
  it.each([
    { rate: 0.035, years: 10, printed: '0.12024' },
    { rate: 0.045, years: 10, printed: '0.12638' },
    { rate: 0.06, years: 10, printed: '0.13587' },
    { rate: 0.08, years: 10, printed: '0.14903' },
    { rate: 0.1, years: 10, printed: '0.16275' },
    { rate: 0.1, years: 4, printed: '0.31547' },
  ])('at $rate over $years years is $printed', ({ rate, years, printed }) => {
    expect(capitalRecoveryFactor(rate, years).toFixed(5)).toBe(printed);
  });

  // Usage of the EPA Air Pollution Control Cost Manual, chapter 2, US EPA, 2002 and 2017: 0.1424 (table A.2 not seen; longer digits derived).
  it.each([
    { years: 10, digits: '0.1423775' },
    { years: 20, digits: '0.0943929' },
  ])('at 7 % over $years years is $digits', ({ years, digits }) => {
    expect(capitalRecoveryFactor(0.07, years).toFixed(7)).toBe(digits);
  });

  // Source: function PMT, LibreOffice Help, Financial Functions Part Two, The Document Foundation: 25,000 at 1.99 % a year, 36 months.
  it('pays 25,000 back with 715.96 a month at 1.99 %/12', () => {
    expect((25_000 * capitalRecoveryFactor(0.0199 / 12, 36)).toFixed(2)).toBe('715.96');
  });
});

// Source: uniform present value factors of the supplement to NIST Handbook 135 (table not seen; digits derived).
describe('the uniform present value factor at 3 %', () => {
  it.each([
    { years: 10, digits: '8.5302' },
    { years: 20, digits: '14.8775' },
  ])('over $years years is $digits', ({ years, digits }) => {
    expect(annuityFactor(0.03, years).toFixed(4)).toBe(digits);
  });
});

describe('the relation of Fisher', () => {
  // Source: corporate finance lecture slides, copy at dybbs8.com, undated, slides 620 and 621: (1 + nominal) = (1 + real)(1 + inflation).
  it.each([
    { nominal: 0.1, inflation: 0.025 },
    { nominal: 0.04, inflation: 0.009 },
    { nominal: 0.02, inflation: 0.06 },
    { nominal: 0.03, inflation: -0.01 },
  ])('holds at $nominal nominal and $inflation inflation', ({ nominal, inflation }) => {
    const real = realRate(nominal, inflation);

    expect((1 + real) * (1 + inflation)).toBeCloseTo(1 + nominal, 15);
    expect(nominalRate(real, inflation)).toBeCloseTo(nominal, 15);
  });

  // Source: "NIST Updates Discount Rates", US DOE FEMP, 2010: nominal 4.0 %, real 3.0 %, implied inflation 0.9 %.
  it('gives 0.971 % for the rounded federal rates of 2010; the published 0.9 % lies within their rounding', () => {
    // The relation is the same in real rate and inflation, so the one function serves for both.
    expect((100 * realRate(0.04, 0.03)).toFixed(3)).toBe('0.971');
    expect(realRate(0.0395, 0.0305)).toBeLessThan(0.009);
    expect(realRate(0.0405, 0.0295)).toBeGreaterThan(0.009);
  });
});

describe('the effective rate', () => {
  // Source: function EFFECT, LibreOffice Help, Financial Functions Part One, The Document Foundation: 9.75 % nominal, paid quarterly.
  it('of 9.75 % in quarters is 10.11 %', () => {
    // What 1 after four quarters is worth now, turned over: 1.024375^4 = 1.1011231.
    const effective = 1 / presentValue([0, 0, 0, 0, 1], 0.0975 / 4) - 1;

    expect(effective.toFixed(4)).toBe('0.1011');
    expect(effective.toFixed(7)).toBe('0.1011231');
  });
});
