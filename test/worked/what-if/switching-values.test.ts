import { describe, expect, it } from 'vitest';
import { type Quantity, constant } from '../../../src/kernel/expression/quantity.ts';
import { breakEven } from '../../../src/study/break-even.ts';
import type { OpenCase } from '../../../src/study/open-case.ts';
import { sensitivity } from '../../../src/study/sensitivity.ts';
import { openGraph } from '../../support/open-graph.ts';

/** What so many years of 1 are worth now: (1 - (1 + rate)^-years) / rate. */
function annuity(rate: Quantity, years: string): Quantity {
  const growth = constant('1')
    .plus(rate)
    .toThePower(constant(`-${years}`));
  return constant('1').minus(growth).dividedBy(rate);
}

function turning(open: OpenCase, id: string): number {
  const found = breakEven(open, 'npv', id);
  expect(found?.crossings, id).toHaveLength(1);
  return found?.crossings[0] ?? NaN;
}

/** HM Treasury, The Green Book (2003), Box 15, paragraphs 5.69 to 5.71: 1,000,000 now against 150,000 a year for ten years at 3.5 %. */
const box15 = openGraph((sheet) => {
  const worth = sheet.input('saving', '150000', 'GBP').times(annuity(sheet.input('rate', '0.035'), '10'));
  sheet.define('npv', worth.minus(sheet.input('outlay', '1000000', 'GBP')));
});

describe('the switching value of a published appraisal', () => {
  it('stands on the present value that the source prints: 247,000', () => {
    const { base } = sensitivity(box15, 'npv', 'share either way');

    expect(Math.round(base / 1000)).toBe(247);
    expect(base).toBeCloseTo(247_490.8, 1);
  });

  // Derived from the same box: 1,000,000 times the capital recovery factor of ten years at 3.5 %, 19.84 % below 150,000.
  it('of the yearly saving is 120,241.37', () => {
    expect(turning(box15, 'saving')).toBeCloseTo(120_241.37, 2);
    expect(1 - turning(box15, 'saving') / 150_000).toBeCloseTo(0.1984, 4);
  });

  it('of the outlay is the present value of the savings', () => {
    expect(turning(box15, 'outlay')).toBeCloseTo(1_247_490.8, 1);
  });

  it('is none for a rate within its neighbourhood, and said as none', () => {
    // 150,000 a year pay back 1,000,000 at 8.144 % a year: within one width of ±20 % around 3.5 % nothing turns.
    expect(breakEven(box15, 'npv', 'rate')?.crossings).toEqual([]);
  });
});

/**
 * A product of five years at 12 % (annuity factor 3.605): 20,000 units at 3.00, variable cost 1.65, fixed cost 10,000 a year, outlay 50,000.
 * Answers as printed: expertsmind.com, "Show calculation of project net present value", question 30188763, no date.
 */
const product = openGraph((sheet) => {
  const units = sheet.input('units', '20000');
  const margin = sheet.input('price', '3').minus(sheet.input('variable', '1.65'));
  const yearly = units.times(margin).minus(sheet.input('fixed', '10000'));
  sheet.define('npv', yearly.times(constant('3.605')).minus(sheet.input('outlay', '50000')));
});

describe('switching values of a product', () => {
  it('stand on a present value of 11,285', () => {
    expect(sensitivity(product, 'npv', 'share either way').base).toBeCloseTo(11_285, 8);
  });

  it.each([
    { id: 'units', printed: 17_681, decimals: 0, change: -11.6 },
    { id: 'price', printed: 2.843, decimals: 3, change: -5.2 },
    { id: 'variable', printed: 1.81, decimals: 2, change: 9.5 },
  ])('are as printed for $id', ({ id, printed, decimals, change }) => {
    const at = turning(product, id);
    const figure = Number(product.model.graph.inputs.find((input) => input.id === id)?.usual.value);

    expect(at.toFixed(decimals)).toBe(printed.toFixed(decimals));
    expect(((at / figure - 1) * 100).toFixed(1)).toBe(change.toFixed(1));
  });

  // The printed rule "change in per cent = 100 x present value / present value of that item" is the elasticity turned over.
  it('are one over the elasticity', () => {
    const { judged } = sensitivity(product, 'npv', 'share either way');
    const of = (id: string): number => judged.find((each) => each.id === id)?.elasticity ?? NaN;

    expect(-1 / of('units')).toBeCloseTo(-0.116, 3);
    expect(-1 / of('price')).toBeCloseTo(-0.052, 3);
    expect(-1 / of('variable')).toBeCloseTo(0.095, 3);
  });
});
