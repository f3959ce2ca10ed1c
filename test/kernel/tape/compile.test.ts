import { describe, expect, test } from 'vitest';
import { compileTape } from '../../../src/kernel/tape/compile.ts';
import { coneOf } from '../../../src/kernel/tape/cone.ts';
import { conesOf } from '../../../src/kernel/tape/cones.ts';
import { runTape } from '../../../src/kernel/tape/run.ts';
import { type Tape, freshSlots, loopOf, resultSlot } from '../../../src/kernel/tape/tape.ts';
import { randomModel } from '../../support/random-figures.ts';
import { SmallGraph } from '../small-graph.ts';

const results = ['difference.total', 'difference.footprint.total'];
const seeds = Array.from({ length: 12 }, (_, k) => 52000 + k);
const tapes = seeds.map((seed) => compileTape(randomModel(seed, { lines: 2, stages: 3 }).model.graph, results));

function small(build: (graph: SmallGraph) => void): Tape {
  const graph = new SmallGraph();
  build(graph);
  return compileTape(graph.build(), ['asked']);
}

describe('a compiled tape', () => {
  test('works equal parts once, products with their factors changed about too', () => {
    const tape = small((graph) => {
      const [a, b] = [graph.input('a', '2'), graph.input('b', '3')];
      graph.define('asked', a.times(b).minus(b.times(a)).plus(a.times(b)));
    });

    // One product, one difference, one sum.
    expect(tape.codes).toHaveLength(3);
  });

  test('keeps differences and quotients apart whose parts are changed about', () => {
    const tape = small((graph) => {
      const [a, b] = [graph.input('a', '2'), graph.input('b', '3')];
      graph.define(
        'asked',
        a
          .minus(b)
          .times(b.minus(a))
          .plus(a.dividedBy(b).times(b.dividedBy(a))),
      );
    });
    const values = freshSlots(tape);
    runTape(tape, values);

    // (2 - 3)(3 - 2) + (2/3)(3/2) = -1 + 1.
    expect(values[resultSlot(tape, 'asked')]).toBeCloseTo(0, 12);
  });

  test('reads nothing that is not worked before, in stretches of one loop each', () => {
    for (const tape of tapes) {
      const { first, second, third, fourth, firstStep, codes, ends } = tape;
      for (let step = 0; step < codes.length; step += 1) {
        for (const reads of [first, second, third, fourth]) expect(reads[step]).toBeLessThan(firstStep + step);
      }
      ends.forEach((end, stretch) => {
        const loops = codes.slice(stretch === 0 ? 0 : ends[stretch - 1], end).map(loopOf);
        expect(new Set(loops).size).toBe(1);
      });
      expect(ends.at(-1)).toBe(codes.length);
    }
  });

  test('has few stretches: fewer than one for each ten steps', () => {
    for (const { codes, ends } of tapes) expect(ends.length).toBeLessThan(codes.length / 10);
  });

  test('is the same one when asked for again', () => {
    const { graph } = randomModel(52000).model;
    expect(compileTape(graph, results)).toBe(compileTape(graph, results));
  });
});

describe('what an input reaches', () => {
  test('is the same for all inputs at once as for one', () => {
    for (const tape of tapes) {
      const slots = results.map((id) => resultSlot(tape, id));
      conesOf(tape).forEach((cone, place) => expect(cone).toEqual(coneOf(tape, [place], slots)));
    }
  });

  test('is all that changes with it', () => {
    for (const tape of tapes.slice(0, 4)) {
      const base = freshSlots(tape);
      runTape(tape, base);
      conesOf(tape).forEach((cone, place) => {
        const moved = freshSlots(tape);
        moved[place]! *= 1.01;
        runTape(tape, moved);
        const changed = [...moved.keys()].filter((slot) => !Object.is(moved[slot], base[slot]));
        const reached = new Set([place, ...[...cone].map((step) => tape.firstStep + step)]);
        expect(changed.filter((slot) => !reached.has(slot))).toEqual([]);
      });
    }
  });

  test('stops at steps whose values are given', () => {
    const tape = small((graph) => {
      const [a, b] = [graph.input('a', '2'), graph.input('b', '3')];
      graph.define('asked', a.times(b).plus(b));
    });
    const product = tape.firstStep;
    const sum = product + 1;

    expect([...coneOf(tape, [product], [sum])]).toEqual([1]);
  });
});
