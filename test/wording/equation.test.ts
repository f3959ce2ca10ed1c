import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { evaluateDecimal } from '../../src/kernel/evaluate/decimal.ts';
import { Failure } from '../../src/kernel/evaluate/failure.ts';
import { type Quantity, constant, total } from '../../src/kernel/expression/quantity.ts';
import { GraphBuilder } from '../../src/kernel/graph/graph-builder.ts';
import { working } from '../../src/kernel/graph/working.ts';
import { type Leaves, equation } from '../../src/wording/equation.ts';
import { readEquation } from './read-equation.ts';

const leaves: Leaves = { named: (node) => node.declaration?.label ?? '', fixed: (digits) => digits };

/** A quantity, as it is written and as it is worked out; NaN where that fails. */
function told(quantity: Quantity): { readonly text: string; readonly value: number } {
  const builder = new GraphBuilder();
  builder.define({ id: 'asked', label: 'Asked for', unit: quantity.unit.text }, quantity);
  const graph = builder.build();
  const value = evaluateDecimal(graph)[graph.positions.get('asked') ?? -1];
  return {
    text: equation(working(graph, 'asked'), leaves),
    value: value === undefined || value instanceof Failure ? NaN : value.toNumber(),
  };
}

const number = (digits: string): Quantity => constant(digits);
const [two, three, four, five] = ['2', '3', '4', '5'].map(number) as [Quantity, Quantity, Quantity, Quantity];

describe('an equation', () => {
  it.each<[Quantity, string]>([
    [two.plus(three).plus(four), '2 + 3 + 4'],
    [two.minus(three.minus(four)), '2 \u2212 (3 \u2212 4)'],
    [two.minus(three).minus(four), '2 \u2212 3 \u2212 4'],
    [two.minus(total([three, four], '1')), '2 \u2212 (3 + 4)'],
    [two.plus(three).times(four), '(2 + 3) \u00d7 4'],
    [two.times(three).plus(four), '2 \u00d7 3 + 4'],
    [two.dividedBy(three.times(four)), '2 \u00f7 (3 \u00d7 4)'],
    [two.dividedBy(three.dividedBy(four)), '2 \u00f7 (3 \u00f7 4)'],
    [two.dividedBy(three).times(four), '2 \u00f7 3 \u00d7 4'],
    [two.times(three).toThePower(four.plus(five)), '(2 \u00d7 3) to the power of (4 + 5)'],
    [two.toThePower(three).times(four), '(2 to the power of 3) \u00d7 4'],
    [two.lesserOf(three.plus(four)), 'the lesser of 2 and 3 + 4'],
    [two.greaterOf(three.lesserOf(four)), 'the greater of 2 and (the lesser of 3 and 4)'],
    [two.lesserOf(three).times(four), '(the lesser of 2 and 3) \u00d7 4'],
    [two.whenAbove(three, four, five), '4 where 2 is above 3, else 5'],
    [two.within({ most: '9' }), '2'],
    [two.plus(three).within({ most: '5' }).times(four), '(2 + 3) \u00d7 4'],
  ])('is written with the brackets it needs and no others (%#)', (quantity, text) => {
    expect(told(quantity).text).toBe(text);
  });

  it('leaves out a 1 that only changes the unit', () => {
    const tonnes = constant('1', 't').times(constant('0.5', 'kg/t')).times(constant('1', '1/kg'));

    expect(told(constant('0.5', 'kg').times(constant('1', '1/kg'))).text).toBe('0.5');
    expect(told(tonnes).text).toBe('0.5');
    expect(told(two.minus(constant('1'))).text).toBe('2 \u2212 1');
  });

  it('names what has a name, and goes no further', () => {
    const builder = new GraphBuilder();
    const feed = builder.define({ id: 'feed', label: 'Feed', unit: '1' }, two.times(three));
    builder.define({ id: 'stock', label: 'Stock', unit: '1' }, feed.times(four));
    const graph = builder.build();

    expect(equation(working(graph, 'stock'), leaves)).toBe('Feed \u00d7 4');
    expect(equation(working(graph, 'feed'), leaves)).toBe('2 \u00d7 3');
  });

  it('reads back as what it says, however operations are nested', () => {
    const leaf = fc.integer({ min: 11, max: 99 }).map((tenths) => number(String(tenths / 10)));
    const { quantity } = fc.letrec<{ quantity: Quantity }>((tie) => {
      const part = tie('quantity');
      return {
        quantity: fc.oneof(
          { maxDepth: 4, withCrossShrink: true },
          leaf,
          fc.tuple(part, part).map(([a, b]) => a.plus(b)),
          fc.tuple(part, part, part).map((terms) => total(terms, '1')),
          fc.tuple(part, part).map(([a, b]) => a.minus(b)),
          fc.tuple(part, part).map(([a, b]) => a.times(b)),
          fc.tuple(part, part).map(([a, b]) => a.dividedBy(b)),
          fc.tuple(part, leaf).map(([a, b]) => a.toThePower(b)),
          fc.tuple(leaf, part).map(([a, b]) => a.toThePower(b.lesserOf(number('3')))),
          fc.tuple(part, part).map(([a, b]) => a.lesserOf(b)),
          fc.tuple(part, part).map(([a, b]) => a.greaterOf(b)),
          fc.tuple(part, part, part, part).map(([a, b, c, d]) => a.whenAbove(b, c, d)),
          part.map((a) => a.within({})),
        ),
      };
    });
    let read = 0;
    const property = fc.property(quantity, (asked) => {
      const { text, value } = told(asked);
      if (!Number.isFinite(value) || Math.abs(value) > 1e6 || Math.abs(value) < 1e-6) return;
      read += 1;
      expect(readEquation(text) / value, text).toBeCloseTo(1, 6);
    });
    fc.assert(property, { seed: 20262, numRuns: 1500 });
    expect(read).toBeGreaterThan(700);
  });
});
