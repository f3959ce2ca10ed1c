import { describe, expect, test } from 'vitest';
import type { Blend, Lot } from '../../../src/case/lots.ts';
import { highsSolver } from '../../../src/study/lots/blend/highs-solver.ts';
import { blendable, leastCostBlend } from '../../../src/study/lots/blend/least-cost-blend.ts';
import { givenBlend } from '../../../src/study/lots/blend/given-blend.ts';
import { blendRecord, stockSharesOf } from '../../../src/study/lots/blend/blend-record.ts';
import { priceLots } from '../../../src/study/lots/price-lots.ts';
import { openDemonstration } from './open-demonstration.ts';
import { lotOf, today } from './sample-lots.ts';

const open = openDemonstration();
const solve = await highsSolver();

const offers: readonly Lot[] = [
  lotOf('cheap', {
    grade: '1.02.00',
    moisture: ['14'],
    unusable: ['6'],
    figures: { price: '92', ash: '19', tonnes: '300' },
  }),
  lotOf('middle', {
    grade: '1.04.00',
    moisture: ['10'],
    unusable: ['3'],
    figures: { price: '128', ash: '11', tonnes: '500' },
  }),
  lotOf('clean', {
    grade: '1.05.00',
    moisture: ['8'],
    unusable: ['1'],
    figures: { price: '150', ash: '8', tonnes: '900' },
  }),
];

function blendOf(blend: Blend, lots: readonly Lot[] = offers) {
  const priced = priceLots(open, today, { offers: lots, blend })!;
  return { priced, found: leastCostBlend(open, priced, blend, solve) };
}

function record(shares: readonly number[]) {
  const priced = priceLots(open, today, { offers })!;
  return blendRecord(open, priced.line, priced.lots, stockSharesOf(priced.lots, shares))!;
}

describe('a blend of several lots', () => {
  test('costs the mean of what its lots cost alone, by their shares of the stock', () => {
    const priced = priceLots(open, today, { offers })!;
    const blend = record([0.5, 0.3, 0.2]);
    const mean = priced.lots.reduce((sum, { cost }, at) => sum + cost * blend.stockShares[at]!, 0);

    expect(blend.cost).toBeCloseTo(mean, 7);
    expect(blend.parts.map(({ feedShare }) => Number(feedShare.toFixed(9)))).toEqual([0.5, 0.3, 0.2]);
  });

  test('of one lot is that lot', () => {
    expect(record([0, 1, 0]).cost).toBeCloseTo(priceLots(open, today, { offers })!.lots[1]!.cost, 8);
  });
});

describe('a blend by given shares', () => {
  const given = (shares: Record<string, string>, more: Blend = {}) => {
    const blend = { ...more, shares };
    return givenBlend(open, priceLots(open, today, { offers, blend })!, blend);
  };

  test('is held against the limits, and none is said to be kept that is not', () => {
    const found = given({ cheap: '60', clean: '40' }, { moisture: '10', ash: '30' });
    if (found?.kind !== 'blended') throw new Error(JSON.stringify(found));

    expect(found.checks.map(({ name, kept }) => [name.kind, kept])).toEqual([
      ['ash', true],
      ['moisture', false],
    ]);
    // Wet mass for a dry tonne: 0.6/0.86 + 0.4/0.92 = 1.132457, so that 1 - 1/1.132457 = 11.6964 % of it is water. By hand.
    expect(found.record.moisture).toBeCloseTo(11.6964, 4);
  });

  test('must add up to the whole, and be of lots that can be had', () => {
    expect(given({ cheap: '60', clean: '37' })).toEqual({ kind: 'not whole', sum: 97 });
    expect(given({ cheap: '60', gone: '40' })).toEqual({ kind: 'not to be had', lots: ['gone'] });
    expect(given({})).toBeNull();
  });
});

describe('the cheapest blend', () => {
  test('without limits is the cheapest lot alone', () => {
    const { found, priced } = blendOf({});

    expect(found.kind === 'found' && found.record.parts.map(({ lot }) => lot)).toEqual([
      priced.lots.find(({ rank }) => rank === 1)!.lot.id,
    ]);
  });

  test('keeps every limit, and none of a fine grid of blends that do is cheaper', () => {
    const blend: Blend = {
      ash: '13',
      moisture: '11',
      product: '600',
      grades: { '1.02.00': { most: '40' }, '1.05.00': { least: '15' } },
    };
    const { found, priced } = blendOf(blend);
    if (found.kind !== 'found') throw new Error(JSON.stringify(found));
    const lots = blendable(priced);
    const wet = lots.map(({ values }) => values.feed * values.received);
    const feeds = lots.map(({ values }) => values.feed);
    const sum = (shares: readonly number[], of: readonly number[]): number =>
      shares.reduce((all, share, at) => all + share * of[at]!, 0);
    let least = Infinity;
    for (let a = 0; a <= 200; a += 1)
      for (let b = 0; a + b <= 200; b += 1) {
        const z = [a / 200, b / 200, 1 - (a + b) / 200];
        const keeps =
          100 *
            sum(
              z,
              lots.map(({ values }) => values.ash),
            ) <=
            13 &&
          sum(
            z,
            wet.map((w, at) => w * lots[at]!.moisture.mean),
          ) /
            sum(z, wet) <=
            11 &&
          (z[0]! * feeds[0]!) / sum(z, feeds) <= 0.4 &&
          (z[2]! * feeds[2]!) / sum(z, feeds) >= 0.15 &&
          z.every((share, at) => share * wet[at]! * 600 <= [300, 500, 900][at]!);
        if (keeps)
          least = Math.min(
            least,
            sum(
              z,
              lots.map(({ cost }) => cost),
            ),
          );
      }

    expect(found.checks.every(({ kept }) => kept)).toBe(true);
    expect(found.checks).toHaveLength(7);
    expect(found.record.cost).toBeLessThanOrEqual(least + 1e-6);
    // The grid is half a per cent fine, so that the cheapest of it is not far away.
    expect(least - found.record.cost).toBeLessThan(0.5);
    // At least one limit binds, else the cheapest lot alone would have been the answer.
    expect(found.record.parts.length).toBeGreaterThan(1);
  });

  test('that nothing allows is refused with the limit that is the reason, and what the nearest blend comes to', () => {
    const { found } = blendOf({ moisture: '6', ash: '30' });
    if (found.kind !== 'none') throw new Error(JSON.stringify(found));

    expect(found.reasons.map(({ name }) => name.kind)).toEqual(['moisture']);
    expect(found.reasons[0]!.wanted).toBe(6);
    expect(found.reasons[0]!.reached).toBeCloseTo(8, 6);
  });

  test('is refused where there is not enough of all lots together', () => {
    const { found } = blendOf({ product: '100000' });

    expect(found.kind === 'none' && found.reasons.every(({ name }) => name.kind === 'available')).toBe(true);
  });

  test('leaves out lots that are refused, have run out or have no price', () => {
    const gone = { ...offers[0]!, validUntil: '2026-01-01' };
    const { found } = blendOf({}, [gone, offers[1]!, lotOf('dear', { figures: { price: '400' } })]);

    expect(found.kind === 'found' && found.record.parts.map(({ lot }) => lot)).toEqual(['middle']);
    expect(blendOf({}, [gone]).found.kind).toBe('no lots');
  });
});
