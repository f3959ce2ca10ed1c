import { describe, expect, test } from 'vitest';
import type { PricedLot } from '../../../src/index.ts';
import { labelPlace, priceLine } from '../../../renderer/screens/lots/price-line-layout.ts';

const walkAway = (more: Partial<PricedLot['walkAway']> = {}): PricedLot['walkAway'] => ({
  virgin: 372,
  other: 308,
  otherLot: 'nordmere',
  target: NaN,
  against: 'best other lot',
  price: 308,
  low: null,
  high: null,
  ...more,
});

describe('the line of prices', () => {
  test('has three zones that meet, and three marks in their places', () => {
    const line = priceLine({ asked: 318, walkAway: walkAway() })!;

    expect(line.zones.map(({ kind }) => kind)).toEqual(['cheapest', 'dearer than another lot', 'virgin cheaper']);
    expect(line.zones[0]!.from).toBe(0);
    expect(line.zones[0]!.to).toBe(line.zones[1]!.from);
    expect(line.zones[1]!.to).toBe(line.zones[2]!.from);
    expect(line.zones[2]!.to).toBe(1);
    expect(line.marks.map(({ kind, value }) => [kind, value])).toEqual([
      ['pay no more than', 308],
      ['asked', 318],
      ['ties with virgin', 372],
    ]);
    expect(line.marks[0]!.at).toBeCloseTo(line.zones[0]!.to, 12);
  });

  test('has no zone of other lots where virgin is cheaper than all of them', () => {
    const line = priceLine({ asked: 318, walkAway: walkAway({ virgin: 290, price: 290, against: 'virgin line' }) })!;

    expect(line.zones.map(({ kind }) => kind)).toEqual(['cheapest', 'virgin cheaper']);
    expect(line.marks.map(({ kind }) => kind)).toEqual(['pay no more than', 'asked']);
  });

  test('holds fees that are received', () => {
    const line = priceLine({ asked: -10, walkAway: walkAway({ price: -25, other: -25, virgin: 12 }) })!;

    expect(line.ticks[0]!.value).toBeLessThanOrEqual(-25);
    expect(line.marks.map(({ at }) => at)).toEqual(line.marks.map(({ at }) => at).toSorted((a, b) => a - b));
  });

  test('is not drawn where no price is known', () => {
    expect(priceLine({ asked: NaN, walkAway: walkAway({ virgin: NaN, other: NaN, price: NaN }) })).toBeNull();
  });
});

describe('the label of a mark', () => {
  const at = (kind: 'pay no more than' | 'asked', place: number) => ({ kind, at: place, value: 0 });

  test('stands to the left of the limit, and beyond a price asked that stands just there', () => {
    expect(labelPlace(at('pay no more than', 0.5), [], 1000)).toEqual({ x: 493, anchor: 'end' });
    const limit = at('pay no more than', 0.5);
    expect(labelPlace(limit, [limit, at('asked', 0.45)], 1000)).toEqual({ x: 443, anchor: 'end' });
  });

  test('leans inwards at either end of the line', () => {
    expect(labelPlace(at('pay no more than', 0.05), [], 1000).anchor).toBe('start');
    expect(labelPlace(at('asked', 0.95), [], 1000).anchor).toBe('end');
  });
});
