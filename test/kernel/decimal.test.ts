import { describe, expect, it } from 'vitest';
import { evaluateDecimal } from '../../src/kernel/evaluate/decimal.ts';
import { Failure } from '../../src/kernel/evaluate/failure.ts';
import type { Bounds } from '../../src/kernel/expression/operation.ts';
import { type Quantity, constant } from '../../src/kernel/expression/quantity.ts';
import { nodeNamed } from '../../src/kernel/graph/graph.ts';
import { plainInput } from './plain-input.ts';
import { SmallGraph, decimalAt } from './small-graph.ts';

/** The outcome of one quantity "result" that is written down with a fresh graph. */
function resultOf(calculate: (graph: SmallGraph) => Quantity): string {
  const graph = new SmallGraph();
  graph.define('result', calculate(graph));
  return decimalAt(graph.build(), 'result');
}

describe('the decimal reading', () => {
  it('adds 0.1 and 0.2 to 0.3', () => {
    expect(resultOf((graph) => graph.input('a', '0.1').plus(graph.input('b', '0.2')))).toBe('0.3');
    expect(resultOf(() => constant('0.1').plus(constant('0.2')))).toBe('0.3');
  });

  it('keeps the digits of constants and inputs as they were written', () => {
    expect(resultOf(() => constant('0.1234567890123456789012345678901234'))).toBe(
      '0.1234567890123456789012345678901234',
    );
    expect(resultOf((graph) => graph.input('a', '123456789.000000000000000000000001').plus(constant('0')))).toBe(
      '123456789.000000000000000000000001',
    );
  });

  it('carries 34 significant digits, as IEEE 754-2008 decimal128 does', () => {
    expect(resultOf((graph) => constant('1').dividedBy(graph.input('three', '3')))).toBe(`0.${'3'.repeat(34)}`);
    expect(resultOf((graph) => constant('2').dividedBy(graph.input('three', '3')))).toBe(`0.${'6'.repeat(33)}7`);
  });

  it('rounds halves to even', () => {
    // 35 digits, the last of them a 5.
    const even = `1.${'0'.repeat(32)}2`;
    const odd = `1.${'0'.repeat(32)}3`;
    const half = `0.${'0'.repeat(33)}5`;

    expect(resultOf((graph) => graph.input('a', even).plus(constant(half)))).toBe(even);
    expect(resultOf((graph) => graph.input('a', odd).plus(constant(half)))).toBe(`1.${'0'.repeat(32)}4`);
  });

  it.each<[string, (left: Quantity, right: Quantity) => Quantity, string, string, string]>([
    ['sum', (left, right) => left.plus(right), '2.5', '-4', '-1.5'],
    ['difference', (left, right) => left.minus(right), '2.5', '4', '-1.5'],
    ['difference from nothing', (left, right) => left.minus(right), '2.5', '0', '2.5'],
    ['product', (left, right) => left.times(right), '2.5', '-4', '-10'],
    ['product with nothing', (left, right) => left.times(right), '0', '-4', '0'],
    ['quotient', (left, right) => left.dividedBy(right), '2.5', '4', '0.625'],
    ['quotient of nothing', (left, right) => left.dividedBy(right), '0', '4', '0'],
    ['power', (left, right) => left.toThePower(right), '2', '-3', '0.125'],
    ['power of a fraction', (left, right) => left.toThePower(right), '2.25', '0.5', '1.5'],
    ['power of nothing', (left, right) => left.toThePower(right), '0', '3', '0'],
    ['power 0', (left, right) => left.toThePower(right), '7', '0', '1'],
    ['odd power of a negative number', (left, right) => left.toThePower(right), '-2', '3', '-8'],
    ['lesser', (left, right) => left.lesserOf(right), '2.5', '-4', '-4'],
    ['greater', (left, right) => left.greaterOf(right), '2.5', '-4', '2.5'],
  ])('works out a %s', (_, calculate, left, right, expected) => {
    expect(resultOf((graph) => calculate(graph.input('left', left), graph.input('right', right)))).toBe(expected);
  });

  it('turns an entry unit into that of the reckoning without binary rounding', () => {
    const graph = new SmallGraph();
    graph.builder.input(plainInput('share', '14', '%', { factor: '0.01' }), '1');

    expect(decimalAt(graph.build(), 'share')).toBe('0.14');
    expect(decimalAt(graph.build(), 'share', new Map([['share', '7']]))).toBe('0.07');
  });

  it('prefers the figure a person gave to the usual one', () => {
    const given = { value: '9', provenance: { status: 'measured', source: 'Meter' } as const };
    const graph = new SmallGraph();
    graph.builder.input(plainInput('x', '5', '1', { given }), '1');

    expect(decimalAt(graph.build(), 'x')).toBe('9');
  });

  it('uses changed figures for one evaluation and none after it', () => {
    const graph = new SmallGraph();
    graph.define('sum', graph.input('a', '1').plus(graph.input('b', null)));
    const built = graph.build();

    expect(
      decimalAt(
        built,
        'sum',
        new Map([
          ['b', '2'],
          ['elsewhere', '9'],
        ]),
      ),
    ).toBe('3');
    expect(decimalAt(built, 'sum')).toBe('no value given at b');
  });
});

describe('a failure', () => {
  it.each<[string, (graph: SmallGraph) => Quantity]>([
    ['division by zero at result', (graph) => graph.input('a', '1').dividedBy(graph.input('b', '0'))],
    ['division by zero at result', (graph) => graph.input('a', '0').dividedBy(graph.input('b', '0'))],
    ['division by zero at result', (graph) => graph.input('a', '1').dividedBy(constant('0'))],
    ['no value given at b', (graph) => graph.input('a', '1').plus(graph.input('b', null))],
    ['no value given at b', (graph) => graph.input('a', '0').times(graph.input('b', null))],
    ['no value given at b', (graph) => graph.input('a', '1').lesserOf(graph.input('b', null))],
    ['no value given at b', (graph) => graph.input('b', null).toThePower(constant('0'))],
    ['no real power at result', (graph) => graph.input('a', '-2').toThePower(graph.input('b', '0.5'))],
    ['no real power at result', (graph) => graph.input('a', '0').toThePower(graph.input('b', '-1'))],
    ['outside at result', (graph) => graph.input('a', '1.01').within({ most: '1' })],
    [
      'division by zero at an unnamed divide',
      (graph) => graph.input('a', '1').dividedBy(graph.input('b', '0')).plus(constant('1')),
    ],
  ])('is %s', (expected, calculate) => {
    expect(resultOf(calculate)).toBe(expected);
  });

  it('tells the numbers that made it', () => {
    const graph = new SmallGraph();
    graph.define('root', graph.input('a', '-2').toThePower(graph.input('b', '0.5')));
    graph.define('share', graph.input('c', '1.5').within({ least: '0', most: '1' }));
    const built = graph.build();
    const values = evaluateDecimal(built);
    const reason = (id: string): unknown => {
      const value = values[nodeNamed(built, id).index];
      return value instanceof Failure ? value.reason : value;
    };

    expect(reason('root')).toEqual({ kind: 'no real power', base: '-2', exponent: '0.5' });
    expect(reason('share')).toEqual({ kind: 'outside', value: '1.5', bounds: { least: '0', most: '1' } });
  });

  it('spoils what is made of it, names where it began, and leaves everything else alone', () => {
    const graph = new SmallGraph();
    const broken = graph.define('broken', graph.input('a', '1').dividedBy(graph.input('b', '0')));
    const after = graph.define('after', broken.times(constant('2')).plus(graph.input('c', '3')));
    graph.define('long after', after.minus(constant('1')));
    graph.define('untouched', graph.input('c', '3').times(constant('2')));
    const built = graph.build();

    expect(decimalAt(built, 'after')).toBe('division by zero at broken');
    expect(decimalAt(built, 'long after')).toBe('division by zero at broken');
    expect(decimalAt(built, 'untouched')).toBe('6');
  });

  it('is mended by another figure', () => {
    const graph = new SmallGraph();
    graph.define('quotient', graph.input('a', '1').dividedBy(graph.input('b', '0')));

    expect(decimalAt(graph.build(), 'quotient', new Map([['b', '4']]))).toBe('0.25');
  });
});

describe('bounds', () => {
  it.each<[Bounds, string, boolean]>([
    [{ least: '0' }, '0', true],
    [{ least: '0' }, '-0.0000000000000000000000000000000001', false],
    [{ most: '1' }, '1', true],
    [{ most: '1' }, '1.000000000000000000000000000000001', false],
    [{ above: '0' }, '0', false],
    [{ above: '0' }, '0.0000000000000000000000000000000001', true],
    [{ below: '1' }, '1', false],
    [{ below: '1' }, '0.999999999999999999999999999999999', true],
    [{ least: '0', below: '100' }, '100', false],
    [{}, '-1e30', true],
  ])('of %o let %s through: %s', (bounds, value, passes) => {
    const graph = new SmallGraph();
    graph.define('checked', graph.input('x', value).within(bounds));

    expect(decimalAt(graph.build(), 'checked').startsWith('outside')).toBe(!passes);
  });

  it('hold for a constant too', () => {
    expect(resultOf(() => constant('1.5').within({ most: '1' }))).toBe('outside at result');
    expect(resultOf(() => constant('0.5').within({ most: '1' }))).toBe('0.5');
  });
});

describe('a choice', () => {
  const chosen = (value: string | null, limit: string | null, above: string | null, otherwise: string | null): string =>
    resultOf((graph) =>
      graph
        .input('value', value)
        .whenAbove(graph.input('limit', limit), graph.input('above', above), graph.input('otherwise', otherwise)),
    );

  it('takes the first result above the limit and the other one at or below it', () => {
    expect(chosen('2', '1', '10', '20')).toBe('10');
    expect(chosen('1', '1', '10', '20')).toBe('20');
    expect(chosen('0', '1', '10', '20')).toBe('20');
  });

  it('needs only the result that it takes', () => {
    expect(chosen('2', '1', '10', null)).toBe('10');
    expect(chosen('0', '1', null, '20')).toBe('20');
  });

  it('fails with the result that it takes, and with either side of the comparison', () => {
    expect(chosen('2', '1', null, '20')).toBe('no value given at above');
    expect(chosen('0', '1', '10', null)).toBe('no value given at otherwise');
    expect(chosen(null, '1', '10', '20')).toBe('no value given at value');
    expect(chosen('2', null, '10', '20')).toBe('no value given at limit');
  });
});
