import { describe, expect, test } from 'vitest';
import type { Lot } from '../../../src/case/lots.ts';
import { openDemonstration } from './open-demonstration.ts';
import { lotOf, pricedFor } from './sample-lots.ts';

const open = openDemonstration();
const kindsOf = (lot: Lot): readonly string[] => pricedFor(open, [lot])[0]!.notes.map(({ kind }) => kind);

describe('what is said of a lot', () => {
  test.each([
    { said: 'no dry matter', lot: lotOf('water', { moisture: ['100'] }) },
    { said: 'nothing usable', lot: lotOf('rubble', { unusable: ['100'] }) },
    { said: 'more than the whole', lot: lotOf('more', { unusable: ['80'], figures: { ash: '30' } }) },
  ])('that it cannot be ranked: $said', ({ said, lot }) => {
    const [found] = pricedFor(open, [lot]);

    expect(found!.notes.map(({ kind }) => kind)).toContain(said);
    expect(found!.notes.map(({ kind }) => kind)).not.toContain('cannot be worked out');
    expect(found!.rank).toBeNull();
    expect(found!.cost).toBeNaN();
  });

  test('that a price is missing, and then no rank but still a price to walk away at', () => {
    const { figures, ...rest } = lotOf('unpriced');
    const { price: _price, ...others } = figures;
    const [found] = pricedFor(open, [{ ...rest, figures: others }, lotOf('rival')]);

    expect(found!.notes).toContainEqual({ kind: 'lacks', figure: 'price' });
    expect(found!.rank).toBeNull();
    expect(found!.walkAway.other).toBeGreaterThan(0);
  });

  test('that a fee is received, and then it is settled as weighed', () => {
    const [found] = pricedFor(open, [lotOf('fee', { moisture: ['20'], figures: { price: '-10' } })]);

    expect(found!.notes.map(({ kind }) => kind)).toContain('fee received');
    expect(found!.settled).toMatchObject({ perTonne: 1, payable: 24, moistureClaim: 0 });
  });

  test('that moisture and contents are the usual ones where nobody read them, and that one reading has no interval', () => {
    const { moisture: _moisture, unusable: _unusable, ...unread } = lotOf('unread');

    expect(kindsOf(unread)).toEqual(['usual contents', 'usual moisture']);
    expect(kindsOf(lotOf('once'))).toEqual(['single reading']);
  });

  test('that the freight of a load cannot be told without its money', () => {
    const kinds = pricedFor(open, [lotOf('load', { delivery: 'ex works by load' })])[0]!.notes;

    expect(kinds).toContainEqual({ kind: 'lacks', figure: 'loadMoney' });
    expect(kinds).toContainEqual({ kind: 'lacks', figure: 'payload' });
  });
});

describe('material above the tolerance of the grade', () => {
  // EN 643 1.04.00 tolerates 1.5 % non-paper and 3 % unwanted in all.
  const foul = lotOf('foul', {
    grade: '1.04.00',
    figures: { lights: '2', heavies: '0.5', wire: '0.3', wetStrength: '2.2' },
  });
  const { unusable: _unusable, ...byKind } = foul;

  test('is told apart as non-paper and in all', () => {
    const [found] = pricedFor(open, [byKind]);

    expect(found!.overTolerance!.nonPaper).toBeCloseTo(1.3, 9);
    expect(found!.overTolerance!.unwanted).toBeCloseTo(2, 9);
  });

  test('costs what the lot would cost less if it kept the tolerance', () => {
    const [found, clean] = pricedFor(open, [
      byKind,
      {
        ...byKind,
        id: 'clean',
        figures: {
          ...byKind.figures,
          lights: String(3 / 2.8),
          heavies: String(0.75 / 2.8),
          wire: String(0.45 / 2.8),
          wetStrength: '1.5',
        },
      },
    ]);

    expect(clean!.overTolerance).toBeNull();
    expect(found!.overTolerance!.cost).toBeCloseTo(found!.cost - clean!.cost, 9);
    expect(found!.overTolerance!.cost).toBeGreaterThan(0);
  });

  test('may be claimed for, or the lot downgraded: what is told beforehand is what comes of it', () => {
    const [found] = pricedFor(open, [{ ...byKind, figures: { ...byKind.figures, downgradePrice: '95' } }]);
    const [claimed] = pricedFor(open, [{ ...byKind, remedy: 'claim' }]);
    const [downgraded] = pricedFor(open, [
      { ...byKind, remedy: 'downgrade', figures: { ...byKind.figures, downgradePrice: '95' } },
    ]);

    expect(claimed!.cost).toBeCloseTo(found!.overTolerance!.claimed, 9);
    expect(claimed!.settled.unusableClaim).toBeCloseTo(24 * 0.02 * 120, 9);
    expect(downgraded!.cost).toBeCloseTo(found!.overTolerance!.downgraded, 9);
    expect(downgraded!.cost).toBeLessThan(found!.cost);
  });
});
