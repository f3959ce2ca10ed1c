import { describe, expect, it } from 'vitest';
import { constant, total } from '../../../src/kernel/expression/quantity.ts';
import { sensitivity } from '../../../src/study/sensitivity.ts';
import { openGraph } from '../../support/open-graph.ts';

/**
 * Five years of free cash flow, sales x (1 + growth)^year x margin, discounted: sales of 100 million, growth 6 %, margin 18 %, rate 10 %; each
 * driver by 10 % of its value either way. Printed: present value 80.6, the widest bar (sales) from 72.6 to 88.7, a span of 16.1.
 * Source: Phuc Nguyen Van, "Sensitivity and scenario analysis", phucnguyenvan.com/embed/sabv-sensitivity-analysis, no date.
 */
const project = openGraph((sheet) => {
  const [sales, growth, margin, rate] = [
    sheet.input('sales', '100'),
    sheet.input('growth', '0.06'),
    sheet.input('margin', '0.18'),
    sheet.input('rate', '0.10'),
  ];
  const years = ['1', '2', '3', '4', '5'].map((year) =>
    sales
      .times(constant('1').plus(growth).toThePower(constant(year)))
      .times(margin)
      .dividedBy(constant('1').plus(rate).toThePower(constant(year))),
  );
  sheet.define('npv', total(years, '1'));
});

describe('a published tornado', () => {
  const found = sensitivity(project, 'npv', 'share either way', 0.1);
  const bar = (id: string) => found.judged.find((each) => each.id === id);

  it('starts from a present value of 80.6', () => {
    expect(found.base.toFixed(1)).toBe('80.6');
  });

  it('has sales among the widest bars, from 72.6 to 88.7, 16.1 apart', () => {
    expect(bar('sales')?.atLow.toFixed(1)).toBe('72.6');
    expect(bar('sales')?.atHigh.toFixed(1)).toBe('88.7');
    expect(bar('sales')?.swing.toFixed(1)).toBe('16.1');
    expect(found.judged[0]?.swing).toBeCloseTo(bar('sales')?.swing ?? NaN, 9);
  });

  // The margin multiplies as sales do: a change of 10 % moves the result by 10 % either way.
  it('has a margin that weighs as much as sales', () => {
    expect(bar('margin')?.swing).toBeCloseTo(bar('sales')?.swing ?? NaN, 9);
    expect(bar('margin')?.elasticity).toBeCloseTo(1, 12);
  });

  it('ranks growth and the rate below, the rate with its dark end on the low side', () => {
    expect(found.judged.map(({ id }) => id).slice(2)).toEqual(['rate', 'growth']);
    expect(bar('rate')?.atHigh).toBeLessThan(found.base);
  });
});
