import { describe, expect, it } from 'vitest';
import { type Quantity, constant } from '../../src/kernel/expression/quantity.ts';
import { type Working, ingredients, madeOf, working } from '../../src/kernel/graph/working.ts';
import { SmallGraph } from './small-graph.ts';

/** cost = price * (feed + 3) + freight, where feed is worked out and freight is promised. */
function costGraph() {
  const graph = new SmallGraph();
  const feed = graph.define('feed', graph.input('stock', '2', 't').dividedBy(graph.input('yield', '0.8')));
  const price = graph.input('price', '5', 'EUR/t');
  const bought = feed.plus(constant('3', 't'));
  graph.define('cost', price.times(bought).plus(graph.builder.later('freight', 'EUR')));
  graph.define('freight', bought.times(graph.input('rate', '1', 'EUR/t')));
  graph.define('profit', graph.builder.later('cost', 'EUR').minus(price.times(constant('9', 't'))));
  return graph.build();
}

function inWords(step: Working): string {
  if (step.kind === 'named') return step.node.declaration?.id ?? 'nameless';
  if (step.kind === 'fixed') return step.digits;
  return `${step.node.operation.op}(${step.of.map(inWords).join(', ')})`;
}

const namesOf = (nodes: readonly { declaration: { id: string } | null }[]) => nodes.map((node) => node.declaration?.id);

describe('the working of a quantity', () => {
  it('goes down to the next names and fixed numbers', () => {
    expect(inWords(working(costGraph(), 'cost'))).toBe('sum(multiply(price, sum(feed, 3)), later(freight))');
    expect(inWords(working(costGraph(), 'feed'))).toBe('divide(stock, yield)');
  });

  it('of an input is the input', () => {
    expect(inWords(working(costGraph(), 'price'))).toBe('price');
  });

  it('of a quantity that is another under a new name is that other', () => {
    const graph = new SmallGraph();
    graph.define('alias', graph.define('real', graph.input('x', '1').plus(constant('1'))));

    expect(inWords(working(graph.build(), 'alias'))).toBe('same(real)');
  });

  it('holds a chain of 20,000 nameless steps', () => {
    const graph = new SmallGraph();
    let chain: Quantity = graph.input('start', '1');
    for (let step = 0; step < 20_000; step += 1) chain = chain.times(constant('1.1'));
    graph.define('end', chain);
    const built = graph.build();

    let depth = 0;
    for (let step = working(built, 'end'); step.kind === 'made' && step.of[0] !== undefined; step = step.of[0])
      depth += 1;
    expect(depth).toBe(20_000);
    expect(namesOf(ingredients(built, 'end'))).toEqual(['start']);
  });

  it('does not grow where nameless steps are shared: 64 doublings are 64 steps', () => {
    const graph = new SmallGraph();
    let doubled: Quantity = graph.input('start', '1');
    for (let step = 0; step < 64; step += 1) doubled = doubled.plus(doubled);
    graph.define('end', doubled);
    const built = graph.build();

    const step = working(built, 'end');
    expect(step.kind === 'made' && step.of[0] === step.of[1]).toBe(true);
    expect(namesOf(ingredients(built, 'end'))).toEqual(['start']);
  });
});

describe('ingredients', () => {
  it('are the names that a quantity is directly made of, each once, in the order met', () => {
    expect(namesOf(ingredients(costGraph(), 'cost'))).toEqual(['price', 'feed', 'freight']);
    expect(namesOf(ingredients(costGraph(), 'profit'))).toEqual(['cost', 'price']);
  });

  it('of an input are none', () => {
    expect(ingredients(costGraph(), 'price')).toEqual([]);
  });
});

describe('what is made of a quantity', () => {
  it('are the names next above it, through nameless steps and promises', () => {
    expect(namesOf(madeOf(costGraph(), 'price')).sort()).toEqual(['cost', 'profit']);
    expect(namesOf(madeOf(costGraph(), 'feed')).sort()).toEqual(['cost', 'freight']);
    expect(namesOf(madeOf(costGraph(), 'freight'))).toEqual(['cost']);
    expect(namesOf(madeOf(costGraph(), 'stock'))).toEqual(['feed']);
  });

  it('is nothing for a result that nobody uses', () => {
    expect(madeOf(costGraph(), 'profit')).toEqual([]);
  });

  it('mirrors the ingredients', () => {
    const graph = costGraph();
    for (const id of graph.positions.keys()) {
      for (const part of ingredients(graph, id)) {
        expect(namesOf(madeOf(graph, part.declaration?.id ?? ''))).toContain(id);
      }
    }
  });

  it('refuses a name that is not there', () => {
    expect(() => madeOf(costGraph(), 'loss')).toThrow('No quantity named "loss"');
    expect(() => working(costGraph(), 'loss')).toThrow('No quantity named "loss"');
  });
});
