import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { type OpenCase, breakEven, changeInput, openCase, sensitivity, spaced, twoWay } from '../../src/index.ts';

function opened(name: string): OpenCase {
  const found = openCase(readFileSync(`examples/${name}.tonne`, 'utf8'));
  if (!found.ok) throw new Error(name);
  return found.value;
}

function changed(open: OpenCase, id: string, figure: number): number {
  const found = changeInput(open, id, String(figure), { source: 'test' });
  if (!found.ok) throw new Error(`${id} = ${String(figure)}`);
  return found.value.values.number('difference.total');
}

const demonstration = opened('demonstration');

describe('one-way sensitivity', () => {
  const found = sensitivity(demonstration, 'difference.total');

  it('stands on the difference itself', () => {
    expect(found.base).toBeCloseTo(demonstration.values.number('difference.total'), 9);
  });

  it('gives at each end what the case gives with that figure typed', () => {
    for (const swing of found.judged.slice(0, 12)) {
      expect(swing.atLow, swing.id).toBeCloseTo(changed(demonstration, swing.id, swing.low), 8);
      expect(swing.atHigh, swing.id).toBeCloseTo(changed(demonstration, swing.id, swing.high), 8);
    }
  });

  it('is ranked by swing, and marks what could turn the answer', () => {
    const swings = found.judged.map((each) => each.swing);

    expect(swings).toEqual([...swings].sort((a, b) => b - a));
    expect(found.judged.filter((each) => each.flips).map((each) => each.id)).toContain('material.bctmp.price');
    for (const each of found.judged)
      expect(each.flips).toBe([each.atLow, each.atHigh].some((at) => at * found.base < 0));
  });

  it('keeps inputs without a judged range apart', () => {
    expect(found.conventional.map((each) => each.id)).toContain('product.tonnes');
    expect(found.judged.map((each) => each.id)).not.toContain('product.tonnes');
  });

  it('moves every input by one share when asked to, and says so', () => {
    const even = sensitivity(demonstration, 'difference.total', 'share either way', 0.1);
    const price = even.judged.find((each) => each.id === 'material.bctmp.price');

    expect(even.conventional).toEqual([]);
    expect([price?.low, price?.high]).toEqual([490.5, 599.5]);
  });

  it('shares out what the answer rests on to the whole', () => {
    const { measured, sourced, 'rule of thumb': thumb } = found.rests;

    expect(measured + sourced + thumb).toBeCloseTo(1, 12);
    expect(measured).toBe(0);
  });
});

// Source: story of the whole tonne, worked by hand: pulp 520.93 net (a discount of 25.58 % from 700), paper 256.70, yield 64.38 %.
describe('break-even', () => {
  const story = opened('stories/s1');
  const turnsAt = (id: string): readonly number[] => breakEven(story, 'difference.total', id)?.crossings ?? [];

  it('of the recovered price, the pulp discount and the loss is what was worked by hand', () => {
    expect(turnsAt('material.paper.price').map((at) => at.toFixed(2))).toEqual(['256.70']);
    expect(turnsAt('material.pulp.discount').map((at) => (700 * (1 - at / 100)).toFixed(2))).toEqual(['520.93']);
    expect(turnsAt('recovered.paper.clean.removal.fibre').map((at) => (100 - at).toFixed(2))).toEqual(['64.38']);
  });

  it('says none where the result never turns in the range', () => {
    expect(turnsAt('recovered.machine.dose.starch')).toEqual([]);
    expect(turnsAt('price.heat')).toEqual([]);
  });

  // Only people are paid by the year: recovered is cheaper by 49.4621 a tonne before them, and 1.0 million a year dearer in them.
  it('of the yearly tonnes is where the people of the longer line eat the gain', () => {
    expect(turnsAt('product.tonnes')[0]).toBeCloseTo(1_000_000 / 49.46213, 0);
  });

  it('is nothing for an input that the result does not depend on', () => {
    expect(breakEven(story, 'virgin.cost.total', 'material.paper.price')).toBeNull();
  });
});

describe('a two-way table', () => {
  it('gives in each cell what the case gives with both figures typed', () => {
    const across = { id: 'material.mixed.price', figures: spaced(60, 160, 5) };
    const down = { id: 'price.electricity', figures: spaced(0.05, 0.2, 4) };

    const { cells } = twoWay(demonstration, 'difference.total', across, down);

    const withPower = changeInput(demonstration, down.id, String(down.figures[2]));
    if (!withPower.ok) throw new Error('price.electricity');
    expect(cells[2]?.[3]).toBeCloseTo(changed(withPower.value, across.id, across.figures[3] ?? NaN), 8);
    expect(cells).toHaveLength(4);
    expect(cells.every((row) => row.length === 5)).toBe(true);
  });

  it('is as large as 101 by 101, and even where neither input matters', () => {
    const across = { id: 'material.mixed.price', figures: spaced(0, 200, 101) };
    const down = { id: 'material.supermarket.price', figures: spaced(0, 200, 101) };

    const moved = twoWay(demonstration, 'difference.total', across, down).cells;
    const still = twoWay(demonstration, 'virgin.cost.total', across, down).cells;

    expect(moved[100]?.[100]).toBeGreaterThan(moved[0]?.[0] ?? Infinity);
    expect(new Set(still.flat()).size).toBe(1);
  });
});
