import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { type Quantity, constant } from '../../src/kernel/expression/quantity.ts';
import { Cycle } from '../../src/kernel/graph/order.ts';
import { SmallGraph, decimalAt, floatAt } from './small-graph.ts';

function ringOf(build: (graph: SmallGraph) => void): readonly string[] {
  const graph = new SmallGraph();
  build(graph);
  try {
    graph.build();
  } catch (fault) {
    if (fault instanceof Cycle) return fault.ring;
    throw fault;
  }
  return [];
}

describe('quantities that are worked out from one another', () => {
  it('are named in the order of the ring', () => {
    const graph = new SmallGraph();
    graph.define('a', graph.builder.later('b', '1').plus(constant('1')));
    graph.define('b', graph.builder.later('a', '1').times(constant('2')));

    expect(() => graph.build()).toThrow('These are worked out from one another: a, then b, then a');
  });

  it('are found where a quantity needs itself', () => {
    expect(ringOf((graph) => graph.define('a', graph.builder.later('a', '1').plus(constant('1'))))).toEqual(['a', 'a']);
  });

  it('are named without those that only lead to the ring', () => {
    const ring = ringOf((graph) => {
      graph.define('entrance', graph.builder.later('x', '1'));
      graph.define('x', graph.builder.later('y', '1').plus(graph.input('free', '1')));
      graph.define('y', graph.builder.later('z', '1'));
      graph.define('z', graph.builder.later('x', '1'));
    });

    expect(ring).toEqual(['x', 'y', 'z', 'x']);
  });

  it('are not suspected where two ways lead to one quantity', () => {
    const ring = ringOf((graph) => {
      const root = graph.input('root', '1');
      const left = graph.define('left', root.plus(constant('1')));
      const right = graph.define('right', root.times(constant('2')));
      graph.define('top', left.plus(right).plus(graph.builder.later('left', '1')));
    });

    expect(ring).toEqual([]);
  });
});

describe('the order of a graph', () => {
  it('holds a chain of 20,000 operations without exhausting the stack', () => {
    const graph = new SmallGraph();
    let chain: Quantity = graph.input('start', '0');
    const one = constant('1');
    for (let step = 0; step < 20_000; step += 1) chain = chain.plus(one);
    graph.define('end', chain);
    const built = graph.build();

    expect(built.nodes).toHaveLength(20_002);
    expect(decimalAt(built, 'end')).toBe('20000');
    expect(floatAt(built, 'end')).toBe(20_000);
  });

  it('holds a chain of 20,000 promises', () => {
    const graph = new SmallGraph();
    for (let step = 20_000; step > 0; step -= 1) {
      graph.define(`q${String(step)}`, graph.builder.later(`q${String(step - 1)}`, '1').plus(constant('1')));
    }
    graph.define('q0', graph.input('start', '5'));

    expect(decimalAt(graph.build(), 'q20000')).toBe('20005');
  });

  it('puts a quantity that is used many times down once', () => {
    const graph = new SmallGraph();
    let doubled: Quantity = graph.input('start', '1');
    for (let step = 0; step < 64; step += 1) doubled = doubled.plus(doubled);
    graph.define('end', doubled);
    const built = graph.build();

    expect(built.nodes).toHaveLength(65);
    // 2^64
    expect(decimalAt(built, 'end')).toBe('18446744073709551616');
  });

  it('puts everything after what it is made of, for graphs of any form', () => {
    // Quantity n adds up some of those before it; about half are promised rather than passed, so that definitions stand in any order.
    const shape = fc.array(fc.array(fc.tuple(fc.nat(), fc.boolean()), { maxLength: 4 }), {
      minLength: 1,
      maxLength: 30,
    });
    fc.assert(
      fc.property(shape, (rows) => {
        const graph = new SmallGraph();
        const made: Quantity[] = [];
        const values: number[] = [];
        rows.forEach((row, place) => {
          const parts = place === 0 ? [] : row.map(([choice, promised]) => [choice % place, promised] as const);
          const terms = parts.map(([at, promised]) =>
            promised ? graph.builder.later(`q${String(at)}`, '1') : made[at]!,
          );
          const start: Quantity = graph.input(`x${String(place)}`, String(place + 1));
          made.push(
            graph.define(
              `q${String(place)}`,
              terms.reduce((sum, term) => sum.plus(term), start),
            ),
          );
          values.push(parts.reduce((sum, [at]) => sum + values[at]!, place + 1));
        });
        const built = graph.build();

        for (const node of built.nodes) {
          expect(built.nodes[node.index]).toBe(node);
          for (const arg of node.args) expect(arg).toBeLessThan(node.index);
        }
        expect(rows.map((_, place) => Number(decimalAt(built, `q${String(place)}`)))).toEqual(values);
      }),
      { numRuns: 60 },
    );
  });
});
