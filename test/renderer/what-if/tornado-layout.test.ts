import { describe, expect, it } from 'vitest';
import { barsThatFit } from '../../../renderer/screens/what-if/tornado/bars-that-fit.ts';
import { layOutTornado } from '../../../renderer/screens/what-if/tornado/tornado-layout.ts';
import { sensitivityOf, swing } from './swings.ts';

const words = { input: (value: number) => String(value), swing: (value: number) => value.toFixed(1) };
const many = (count: number, more = {}) =>
  Array.from({ length: count }, (_, place) => swing(`s${String(place)}`, -100 + place, -20 - place, more));

describe('bars that fit', () => {
  it('shows the largest that a height holds with rows of at least 24 pixels, and counts the others', () => {
    // 250 less 18 for the axis is 232: nine rows of 24 are 216, ten would be 240.
    const fit = barsThatFit({ judged: many(40), conventional: [] }, 250);

    expect(fit.judged.map(({ id }) => id)).toEqual(many(9).map(({ id }) => id));
    expect(fit.pitch).toBeCloseTo(232 / 9);
    expect(fit.hidden).toBe(31);
  });

  it('keeps a quarter of the rows for those without a known range, and at most three', () => {
    const conventional = many(8, { convention: true });
    // 250 less 18 and 19 for the heading is 213: eight rows, of which two.
    expect(barsThatFit({ judged: many(40), conventional }, 250).conventional).toHaveLength(2);
    expect(barsThatFit({ judged: many(40), conventional }, 600).conventional).toHaveLength(3);
    expect(barsThatFit({ judged: many(2), conventional }, 250).conventional).toHaveLength(6);
  });

  it('does not draw few bars taller than they are good for', () => {
    expect(barsThatFit({ judged: many(2), conventional: [] }, 500).pitch).toBe(36);
  });
});

describe('the picture of swings', () => {
  it('draws every bar on one scale, from today to the ends, and nothing as a line across', () => {
    const layout = layOutTornado(sensitivityOf([swing('wide', 20, -140), swing('narrow', -80, -40)]), 600, 250, words);
    const [wide, narrow] = layout.bars;
    const perUnit = (narrow!.high!.width + narrow!.low!.width) / 40;

    // The wide one reaches 80 either way, the narrow one 20.
    expect(wide!.low!.width / perUnit).toBeCloseTo(80);
    expect(wide!.low!.x).toBeCloseTo(layout.today);
    expect(narrow!.low!.x).toBeCloseTo(layout.today - 20 * perUnit);
    expect(layout.zero).toBeCloseTo(layout.today + 60 * perUnit);
  });

  it('writes the figure of the input at the end that it moves the result to', () => {
    const [bar] = layOutTornado(sensitivityOf([swing('price', 20, -140)]), 600, 250, words).bars;

    expect(bar!.ends.map(({ text, anchor }) => [text, anchor])).toEqual([
      ['10', 'start'],
      ['30', 'end'],
    ]);
  });

  it('marks a bar whose ends move the answer one way, and lets neither half hide the other', () => {
    const [bar] = layOutTornado(sensitivityOf([swing('loop', -70, -90, { sameWay: true })]), 900, 250, words).bars;

    expect(bar!.isOneWay).toBe(true);
    expect(bar!.ends.map(({ text, anchor }) => [text, anchor])).toEqual([['10, 30', 'end']]);
    expect(bar!.flag).toMatchObject({ text: 'both ends one way', anchor: 'start' });
  });

  it('leaves nothing off the scale where it lies so far that bars would be squeezed', () => {
    const far = { ...sensitivityOf([swing('a', -1001, -999)]), base: -1000 };

    expect(layOutTornado(far, 600, 250, words).zero).toBeNull();
  });

  it('draws no half for an end at which the result cannot be', () => {
    const [bar] = layOutTornado(sensitivityOf([swing('a', Number.NaN, -20)]), 600, 250, words).bars;

    expect(bar!.low).toBeNull();
    expect(bar!.ends.map(({ text }) => text)).toEqual(['30']);
    // The bar goes right of today, so the words stand left of it: there is no room for them, and the mark stands alone.
    expect(bar!.flag).toMatchObject({ text: '', anchor: 'end' });
    const [other] = layOutTornado(sensitivityOf([swing('a', -90, Number.NaN)]), 900, 250, words).bars;
    expect(other!.flag).toMatchObject({ text: 'cannot be at 30', anchor: 'start' });
  });

  it('puts those without a known range below a heading, hatched', () => {
    const apart = swing('service', 0, -120, { convention: true });
    const layout = layOutTornado(sensitivityOf(many(3), [apart]), 600, 250, words);

    expect(layout.apart).toBeCloseTo(18 + 3 * layout.pitch);
    expect(layout.bars.map(({ isHatched }) => isHatched)).toEqual([false, false, false, true]);
    expect(layout.bars[3]!.y).toBeGreaterThan(layout.apart! + 19);
    expect(layout.bottom).toBeCloseTo(18 + 19 + 4 * layout.pitch);
  });
});
