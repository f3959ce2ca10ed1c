import { describe, expect, it } from 'vitest';
import { constant } from '../../src/kernel/expression/quantity.ts';
import { GraphBuilder } from '../../src/kernel/graph/graph-builder.ts';
import { nodeAt, nodeNamed } from '../../src/kernel/graph/graph.ts';
import { plainInput } from './plain-input.ts';
import { SmallGraph, decimalAt } from './small-graph.ts';

describe('building a graph', () => {
  it('refuses a definition of another unit than promised', () => {
    const graph = new SmallGraph();
    const price = graph.input('price', '2', 'EUR/t');

    expect(() => graph.builder.define({ id: 'cost', label: 'Cost', unit: 'EUR' }, price)).toThrow(
      '"cost" is declared otherwise than worked out: the declaration (EUR) and the equation (EUR/t)',
    );
  });

  it('refuses a second definition of one id', () => {
    const graph = new SmallGraph();
    graph.define('cost', constant('1', 'EUR'));

    expect(() => graph.define('cost', constant('2', 'EUR'))).toThrow('"cost" is defined twice');
  });

  it('refuses to define what is an input already', () => {
    const graph = new SmallGraph();
    graph.input('price', '1');

    expect(() => graph.define('price', constant('2'))).toThrow('"price" is defined twice');
  });

  it('refuses an input under the id of something that is worked out', () => {
    const graph = new SmallGraph();
    graph.define('price', constant('2'));

    expect(() => graph.input('price', '1')).toThrow('"price" is worked out, and cannot be an input as well');
  });

  it('shares an input that is asked for twice', () => {
    const graph = new SmallGraph();

    expect(graph.input('price', '1', 'EUR/t')).toBe(graph.input('price', '1', 'EUR/t'));
    expect(graph.build().inputs).toHaveLength(1);
  });

  it('refuses to share an input in another unit', () => {
    const graph = new SmallGraph();
    graph.input('price', '1', 'EUR/t');

    expect(() => graph.input('price', '1', 'EUR/kWh')).toThrow(
      'the input "price" is asked for in two units: before (EUR/t) and now (EUR/kWh)',
    );
  });

  it('says in which unit people read an input that is reckoned in another', () => {
    const builder = new GraphBuilder();

    expect(builder.input(plainInput('share', '14', '%', { factor: '0.01' }), '1').declaration).toEqual({
      id: 'share',
      label: 'Label of share',
      shownIn: '%',
    });
    expect(builder.input(plainInput('price', '2', 'EUR/t', { where: 'At the gate' }), 'EUR/t').declaration).toEqual({
      id: 'price',
      label: 'Label of price',
      where: 'At the gate',
    });
  });

  it('finds every named quantity and every input by its id', () => {
    const graph = new SmallGraph();
    graph.define('cost', graph.input('price', '3', 'EUR/t').times(graph.input('mass', '4', 't')));
    const built = graph.build();

    expect([...built.positions.keys()].sort()).toEqual(['cost', 'mass', 'price']);
    for (const [id, position] of built.positions) expect(nodeAt(built, position).declaration?.id).toBe(id);
    expect(nodeNamed(built, 'cost').unit.text).toBe('EUR');
    expect(() => nodeNamed(built, 'profit')).toThrow('No quantity named "profit"');
    expect(() => nodeAt(built, 99)).toThrow('No node 99');
  });
});

describe('a quantity that is promised and defined later', () => {
  it('has the value of the definition', () => {
    const graph = new SmallGraph();
    graph.define('double', graph.builder.later('feed', 't').times(constant('2')));
    graph.define('feed', graph.input('stock', '3', 't'));

    expect(decimalAt(graph.build(), 'double')).toBe('6');
  });

  it('may be promised several times and in a chain', () => {
    const graph = new SmallGraph();
    graph.define('c', graph.builder.later('b', '1').plus(graph.builder.later('a', '1')));
    graph.define('b', graph.builder.later('a', '1').times(constant('10')));
    graph.define('a', graph.input('x', '4'));

    expect(decimalAt(graph.build(), 'c')).toBe('44');
  });

  it('must be defined in the end', () => {
    const graph = new SmallGraph();
    graph.define('a', graph.builder.later('b', '1'));

    expect(() => graph.build()).toThrow('"b" was promised and never defined');
  });

  it('must be of the unit that was promised', () => {
    const graph = new SmallGraph();
    graph.define('cost', graph.builder.later('energy', 'kWh'));
    graph.define('energy', graph.input('steam', '1', 'GJ'));

    expect(() => graph.build()).toThrow(
      '"energy" is promised otherwise than defined: the promise (kWh) and the definition (GJ)',
    );
  });
});
