import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { evaluateFloat, floatProgram } from '../../src/kernel/evaluate/float.ts';
import type { Bounds } from '../../src/kernel/expression/operation.ts';
import { type Quantity, constant } from '../../src/kernel/expression/quantity.ts';
import { nodeNamed } from '../../src/kernel/graph/graph.ts';
import { plainInput } from './plain-input.ts';
import { SmallGraph, decimalAt, floatAt } from './small-graph.ts';

type Calculate = (graph: SmallGraph, x: Quantity, y: Quantity) => Quantity;

const operations: readonly (readonly [string, Calculate])[] = [
  ['a sum', (_, x, y) => x.plus(y).plus(x)],
  ['a difference', (_, x, y) => x.minus(y)],
  ['a product', (_, x, y) => x.times(y)],
  ['a quotient', (_, x, y) => x.dividedBy(y)],
  ['a power', (_, x, y) => x.toThePower(y)],
  ['the lesser', (_, x, y) => x.lesserOf(y)],
  ['the greater', (_, x, y) => x.greaterOf(y)],
  ['a choice', (_, x, y) => x.whenAbove(y, x.minus(y), constant('-7'))],
  ['a bound from below', (_, x) => x.within({ least: '-2' })],
  ['a bound from above', (_, x) => x.within({ most: '2' })],
  ['open bounds', (_, x) => x.within({ above: '-3', below: '3' })],
  ['another name', (graph, x) => graph.define('named', x.plus(constant('1'))).named({ id: 'again', label: 'Again' })],
  ['a promise', (graph, _, y) => graph.builder.later('y', '1').plus(y)],
];

describe('the float reading', () => {
  it.each(operations)('comes to the same as the decimal reading for %s, failures included', (_, calculate) => {
    const figures = [null, '-3', '-2', '-0.5', '0', '0.5', '2', '3'];
    for (const x of figures) {
      for (const y of figures) {
        const graph = new SmallGraph();
        graph.define('result', calculate(graph, graph.input('x', x), graph.input('y', y)));
        const built = graph.build();
        // A failure is words, so it is not a number on both sides.
        const exact = Number(decimalAt(built, 'result'));

        const found = floatAt(built, 'result') ?? Infinity;
        if (Number.isNaN(exact)) expect([x, y, found]).toEqual([x, y, NaN]);
        else expect(found).toBeCloseTo(exact, 12);
      }
    }
  });

  it('agrees with the decimal reading over random sums of products', () => {
    const figure = fc.integer({ min: -1_000_000, max: 1_000_000 }).map((cents) => (cents / 100).toFixed(2));
    fc.assert(
      fc.property(fc.array(fc.tuple(figure, figure), { minLength: 1, maxLength: 20 }), (pairs) => {
        const graph = new SmallGraph();
        const terms = pairs.map(([left, right], place) =>
          graph.input(`l${String(place)}`, left).times(graph.input(`r${String(place)}`, right)),
        );
        graph.define(
          'result',
          terms.reduce((sum, term) => sum.plus(term)),
        );
        const built = graph.build();
        // Twenty products of at most 1e8 each, so rounding stays far below a millionth.
        expect(Math.abs((floatAt(built, 'result') ?? NaN) - Number(decimalAt(built, 'result')))).toBeLessThan(1e-5);
      }),
      { numRuns: 60 },
    );
  });

  it.each<[Bounds, number, boolean]>([
    [{ least: '0', most: '1' }, 0, true],
    [{ least: '0', most: '1' }, 1, true],
    [{ above: '0', below: '1' }, 0, false],
    [{ above: '0', below: '1' }, 1, false],
    [{}, 1e30, true],
  ])('keeps the bounds %o at %d: %s', (bounds, value, passes) => {
    const graph = new SmallGraph();
    graph.define('checked', graph.input('x', String(value)).within(bounds));

    expect(floatAt(graph.build(), 'checked')).toBe(passes ? value : NaN);
  });

  it('lets only the result that is taken fail', () => {
    const graph = new SmallGraph();
    const broken = graph.input('one', '1').dividedBy(graph.input('nothing', '0'));
    graph.define('taken', graph.input('x', '2').whenAbove(constant('1'), constant('10'), broken));
    graph.define('spoilt', graph.input('x', '2').whenAbove(constant('1'), broken, constant('10')));
    graph.define('undecided', broken.whenAbove(constant('1'), constant('10'), constant('20')));
    const built = graph.build();

    expect(floatAt(built, 'taken')).toBe(10);
    expect(floatAt(built, 'spoilt')).toBeNaN();
    expect(floatAt(built, 'undecided')).toBeNaN();
  });

  it('does not mend a failure with a power of 0', () => {
    const graph = new SmallGraph();
    graph.define('result', graph.input('x', null).toThePower(constant('0')));

    expect(floatAt(graph.build(), 'result')).toBeNaN();
  });

  it('takes changes in the entry unit, and forgets them', () => {
    const graph = new SmallGraph();
    const share = graph.builder.input(plainInput('share', '14', '%', { factor: '0.01' }), '1');
    graph.define('rest', share.complement());
    const built = graph.build();
    const program = floatProgram(built);
    const at = nodeNamed(built, 'rest').index;

    expect(
      evaluateFloat(
        program,
        new Map([
          ['share', '75'],
          ['elsewhere', '1'],
        ]),
      )[at],
    ).toBe(0.25);
    expect(evaluateFloat(program)[at]).toBeCloseTo(0.86, 15);
  });

  it('gives a new array unless it is given one to use again', () => {
    const graph = new SmallGraph();
    graph.define('double', graph.input('x', '2').times(constant('2')));
    const built = graph.build();
    const program = floatProgram(built);
    const at = nodeNamed(built, 'double').index;

    const first = evaluateFloat(program);
    const second = evaluateFloat(program, new Map([['x', '5']]));
    expect([first[at], second[at]]).toEqual([4, 10]);

    const third = evaluateFloat(program, new Map([['x', '6']]), second);
    expect(third).toBe(second);
    expect([first[at], second[at]]).toEqual([4, 12]);
  });

  it('leaves nothing of an earlier evaluation in an array that is used again', () => {
    const graph = new SmallGraph();
    const x = graph.input('x', '2');
    graph.define('quotient', constant('1').dividedBy(x));
    graph.define('sum', x.plus(constant('1')));
    const program = floatProgram(graph.build());

    const used = evaluateFloat(program, new Map([['x', '0']]));
    evaluateFloat(program, new Map(), used);
    expect([...used]).toEqual([...evaluateFloat(program)]);
  });
});
