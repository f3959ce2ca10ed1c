import { describe, expect, it } from 'vitest';
import { planResults } from '../../../src/study/investment/plan-results.ts';
import { planInGraph, worthOf, writtenOff } from './plan-graph.ts';

// Published examples, worked as investment plans of the program. The same examples stand against plain numbers in the files beside this one.

// Source: HM Treasury, The Green Book (2003), Box 15, paragraphs 5.69 to 5.71: 1,000,000 now, ten years of savings, 3.5 %.
describe('the replacement in Box 15 of the Green Book, as a plan', () => {
  it.each([
    { saving: 150_000, printed: 247_000, exact: 247_490.8 },
    { saving: 100_000, printed: -168_000, exact: -168_339.47 },
  ])('is worth $printed at savings of $saving', ({ saving, printed, exact }) => {
    const worth = worthOf(planInGraph({ years: 10, outlay: 1e6, saving, rate: 3.5 }));

    // The page cuts the last three digits.
    expect(Math.round(worth / 1000) * 1000).toBe(printed);
    expect(worth).toBeCloseTo(exact, 2);
  });

  it('is worth nothing at savings of 120,241.37', () => {
    // Derived from the same box: 1,000,000 times the capital recovery factor; savings to the cent are worth nothing to four cents.
    expect(Math.abs(worthOf(planInGraph({ years: 10, outlay: 1e6, saving: 120_241.37, rate: 3.5 })))).toBeLessThan(
      0.04,
    );
  });

  it('is worth the same where money loses 2.5 % a year and 6.0875 % are asked, real or nominal', () => {
    // 1.035 x 1.025 = 1.060875.
    const terms = { years: 10, outlay: 1e6, saving: 150_000, rate: 6.0875, inflation: 2.5 };
    const [real, nominal] = (['real', 'nominal'] as const).map((money) =>
      worthOf(planInGraph({ ...terms, plan: { money } })),
    );

    expect(real).toBeCloseTo(247_490.8, 2);
    expect(nominal).toBeCloseTo(real ?? NaN, 6);
  });
});

describe('annuities, as plans', () => {
  // Source: "Annual Capital Recovery Factors", table 1.0, Engineers Edge, undated. Savings of 1 a year are worth the inverse.
  it.each([
    { rate: 3.5, years: 10, printed: '0.12024' },
    { rate: 4.5, years: 10, printed: '0.12638' },
    { rate: 6, years: 10, printed: '0.13587' },
    { rate: 8, years: 10, printed: '0.14903' },
    { rate: 10, years: 10, printed: '0.16275' },
    { rate: 10, years: 4, printed: '0.31547' },
  ])('at $rate % over $years years recover $printed a year', ({ rate, years, printed }) => {
    expect((1 / worthOf(planInGraph({ years, outlay: 0, saving: 1, rate }))).toFixed(5)).toBe(printed);
  });

  // Usage of the EPA Air Pollution Control Cost Manual, chapter 2, US EPA, 2002 and 2017: 0.1424 (table A.2 not seen; longer digits derived).
  // Uniform present value factors of the supplement to NIST Handbook 135 (table not seen; digits derived).
  it.each([
    { rate: 7, years: 10, digits: '7.0236' },
    { rate: 7, years: 20, digits: '10.5940' },
    { rate: 3, years: 10, digits: '8.5302' },
    { rate: 3, years: 20, digits: '14.8775' },
  ])('at $rate % over $years years are worth $digits', ({ rate, years, digits }) => {
    expect(worthOf(planInGraph({ years, outlay: 0, saving: 1, rate })).toFixed(4)).toBe(digits);
  });

  // Source of the inputs: corporate finance lecture slides, copy at dybbs8.com, undated, slides 622 to 625; the answers are derived.
  it.each([
    { outlay: 4000, yearly: 100, years: 10, worth: '-4614.46' },
    { outlay: 1000, yearly: 500, years: 5, worth: '-2895.39' },
  ])('are the cost of a machine of $outlay and $yearly a year: $worth', ({ outlay, yearly, years, worth }) => {
    expect(worthOf(planInGraph({ years, outlay, saving: -yearly, rate: 10 })).toFixed(2)).toBe(worth);
  });
});

// Source: payback period, worked example, calcdomain.com, undated: 10,000 against five years of 3,000; 4.24 of the page is corrected beside.
describe('the payback of 10,000 by 3,000 a year, as a plan', () => {
  it('is 3.333 years, and 4.263 with interest of 10 %', () => {
    const found = planResults(planInGraph({ years: 5, outlay: 10_000, saving: 3000, rate: 10 }));

    expect(found?.payback?.toFixed(3)).toBe('3.333');
    expect(found?.discountedPayback?.toFixed(3)).toBe('4.263');
  });
});

describe('writing off, as a plan', () => {
  const plain = (value: string) => ({ value, unit: '1' });

  // Source: SLN function, Microsoft Support, Excel function reference, undated, example: (30,000 - 7500)/10. A plan has no residual value
  // of its own, so that what stands above it is what is spent.
  it('of 30,000 to 7500 in ten years by the straight line is 2250 a year', () => {
    const open = planInGraph({
      years: 12,
      outlay: 22_500,
      saving: 0,
      rate: 5,
      more: { 'investment.writeOffYears': plain('10') },
    });

    writtenOff(open, 12).forEach((charge, place) => {
      expect(charge).toBeCloseTo(place < 10 ? 2250 : 0, 9);
    });
  });

  // Source: function DDB, LibreOffice Help, Financial Functions Part One, The Document Foundation: 75,000 over 60 months at factor 2 is
  // 1721.81 in the twelfth. A plan writes off over 50 years at most, so that the same share, 2/60, is 5/3 of 1/50.
  it('of 75,000 by a share of 2/60 a year is 1721.81 in the twelfth', () => {
    const open = planInGraph({
      years: 12,
      outlay: 75_000,
      saving: 0,
      rate: 5,
      plan: { depreciation: 'declining balance' },
      more: {
        'investment.writeOffYears': plain('50'),
        'investment.decliningFactor': plain('1.66666666666666666666666667'),
      },
    });

    expect(writtenOff(open, 12).at(-1)?.toFixed(4)).toBe('1721.8059');
  });

  // Source: function SYD, the same help, part one. Its shares are 5/15 to 1/15 of what is above the residual value.
  it('of 50,000 to 10,000 in five years by falling shares is 13,333.33 to 2666.67', () => {
    const shares = [5, 4, 3, 2, 1].map((left, place) => [
      `investment.writtenOff.${String(place + 1)}`,
      { value: String((left / 15) * 100), unit: '%' },
    ]);
    const open = planInGraph({
      years: 5,
      outlay: 40_000,
      saving: 0,
      rate: 5,
      plan: { depreciation: 'table' },
      more: Object.fromEntries(shares) as Record<string, { value: string; unit: string }>,
    });

    expect(writtenOff(open, 5).map((charge) => charge.toFixed(2))).toEqual([
      '13333.33',
      '10666.67',
      '8000.00',
      '5333.33',
      '2666.67',
    ]);
  });

  // Source: function DB, the same help, part one: 25,000 to 1000 in 36 periods, six months in the first: 1075.00, half of the first charge.
  it('of 25,000 by a balance that falls by the share 0.086 is 2150 in the first of 36', () => {
    const open = planInGraph({
      years: 2,
      outlay: 25_000,
      saving: 0,
      rate: 5,
      plan: { depreciation: 'declining balance' },
      more: { 'investment.writeOffYears': plain('36'), 'investment.decliningFactor': plain('3.096') },
    });

    expect(((writtenOff(open, 1)[0] ?? NaN) / 2).toFixed(2)).toBe('1075.00');
  });

  // Source of the inputs: question 7B, solutioninn.com, undated; the answer is derived: 11,666.67 a year times 2.486852.
  it('of 100,000 over three years saves tax of 35 % that is worth 29,013.27 at 10 %', () => {
    const open = planInGraph({
      years: 3,
      outlay: 100_000,
      saving: 0,
      rate: 10,
      plan: { losses: 'at once' },
      more: { 'investment.writeOffYears': plain('3'), 'investment.taxRate': { value: '35', unit: '%' } },
    });

    expect((worthOf(open) + 100_000).toFixed(2)).toBe('29013.27');
  });
});
