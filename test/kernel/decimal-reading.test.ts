import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { Decimal } from '../../src/kernel/evaluate/decimal-settings.ts';
import { DecimalReading, evaluateDecimal } from '../../src/kernel/evaluate/decimal.ts';
import { Failure } from '../../src/kernel/evaluate/failure.ts';
import { type Quantity, constant } from '../../src/kernel/expression/quantity.ts';
import { nodeNamed } from '../../src/kernel/graph/graph.ts';
import { SmallGraph } from './small-graph.ts';

/** A dozen quantities, some failed, some made of failures, some of neither. */
function mixedGraph() {
  const graph = new SmallGraph();
  const [a, b, none] = [graph.input('a', '3'), graph.input('b', '0.5'), graph.input('none', null)];
  const product = graph.define('product', a.times(b).plus(constant('1')));
  const broken = graph.define('broken', product.dividedBy(a.minus(graph.builder.later('three', '1'))));
  graph.define('three', b.times(constant('6')));
  graph.define('spoilt', broken.plus(none));
  graph.define('choice', product.whenAbove(constant('2'), product.toThePower(a), broken));
  graph.define('bounded', product.within({ most: '2' }));
  return graph.build();
}

describe('a decimal reading that is asked for one quantity at a time', () => {
  it('says of each what the whole evaluation says, in whatever order it is asked', () => {
    const graph = mixedGraph();
    const whole = evaluateDecimal(graph);
    const order = fc.shuffledSubarray([...graph.nodes.keys()], { minLength: graph.nodes.length });
    fc.assert(
      fc.property(order, (indices) => {
        const reading = new DecimalReading(graph);
        // Asked twice, so that what it keeps is looked at as well.
        for (const index of [...indices, ...indices]) expect(reading.at(index)).toEqual(whole[index]);
      }),
      { numRuns: 50 },
    );
  });

  it('holds figures in force and failures alike', () => {
    const graph = mixedGraph();
    const reading = new DecimalReading(graph, new Map([['none', '4']]));
    const at = (id: string): string => {
      const value = reading.at(nodeNamed(graph, id).index);
      return value instanceof Failure ? value.reason.kind : value.toString();
    };

    expect([at('product'), at('three'), at('choice')]).toEqual(['2.5', '3', '15.625']);
    expect([at('broken'), at('spoilt'), at('bounded'), at('none')]).toEqual([
      'division by zero',
      'division by zero',
      'outside',
      '4',
    ]);
  });

  it('reaches 20,000 steps down at once', () => {
    const graph = new SmallGraph();
    let chain: Quantity = graph.input('start', '2');
    for (let step = 0; step < 20_000; step += 1) chain = chain.plus(constant('0.5'));
    graph.define('end', chain);
    const built = graph.build();

    expect(new DecimalReading(built).at(nodeNamed(built, 'end').index)).toEqual(new Decimal('10002'));
  });

  it('asks for a place that is in the graph', () => {
    const graph = mixedGraph();

    expect(() => new DecimalReading(graph).at(graph.nodes.length)).toThrow('No node');
  });
});
