import { Decimal as Library } from 'decimal.js';
import { afterEach, describe, expect, it } from 'vitest';
import { Decimal } from '../../src/kernel/evaluate/decimal-settings.ts';
import { constant } from '../../src/kernel/expression/quantity.ts';
import { SmallGraph, decimalAt } from './small-graph.ts';

const before = { precision: Library.precision, rounding: Library.rounding, maxE: Library.maxE, minE: Library.minE };

describe('the settings of the decimal arithmetic', () => {
  afterEach(() => {
    Object.assign(Library, before);
  });

  it('are 34 digits, half to even', () => {
    expect(Decimal.precision).toBe(34);
    expect(Decimal.rounding).toBe(Library.ROUND_HALF_EVEN);
  });

  it('are out of reach of whoever changes those of the library', () => {
    Object.assign(Library, { precision: 3, rounding: Library.ROUND_UP, maxE: 5, minE: -5 });
    const graph = new SmallGraph();
    graph.define('third', constant('1').dividedBy(graph.input('three', '3')));
    graph.define('large', graph.input('million', '1234567.89').times(constant('1000000')));

    expect(new Library(1).dividedBy(3).toString()).toBe('0.334');
    expect(decimalAt(graph.build(), 'third')).toBe(`0.${'3'.repeat(34)}`);
    expect(decimalAt(graph.build(), 'large')).toBe('1234567890000');
  });

  it('do not reach the library either', () => {
    expect(Library.precision).toBe(20);
    expect(new Library(1).dividedBy(3).toString()).toBe(`0.${'3'.repeat(20)}`);
  });

  it('write a number without an exponent as far as 40 places', () => {
    expect(new Decimal('1e39').toString()).toBe(`1${'0'.repeat(39)}`);
    expect(new Decimal('1e-39').toString()).toBe(`0.${'0'.repeat(38)}1`);
  });
});
