import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { footprint, openCase } from '../../../src/index.ts';
import { valueOf } from '../../examples/demonstration.ts';
import { evaluatedText } from '../../support/evaluation.ts';

// What may be printed on the pack: all figures invented, all results worked by hand. Of the fresh dry furnish 12 % is filler and 88 %
// stock, of which 60, 20 and 20 % are post-consumer, pre-consumer and virgin: 0.88 x 80 % = 70.4 %, and 52.8 and 17.6 % of it.
// Definition: ISO 14021:2016, 7.8.1 (as quoted by public pages on recycled claims).
const text = readFileSync(new URL('../../../examples/stories/s7.tonne', import.meta.url), 'utf8');
const story = evaluatedText(text);
const printed = (route: string, what: string): string => (100 * story.number(`${route}.recycled.${what}`)).toFixed(9);

describe.each([
  { route: 'little', broke: 8 },
  { route: 'much', broke: 25 },
])('with $broke % broke', ({ route, broke }) => {
  test('the stock is 60 % post-consumer, 20 % pre-consumer and 20 % virgin, and the furnish 12 % filler', () => {
    const stock = story.number(`${route}.machine.stock`);
    const shares = ['collected', 'cuttings', 'pulp'].map((line) => story.number(`${route}.${line}.stock`) / stock);

    expect(shares.map((share) => share.toFixed(12))).toEqual(['0.600000000000', '0.200000000000', '0.200000000000']);
    expect(story.number(`${route}.machine.wetEndAdditives`) / story.number(`${route}.machine.fresh`)).toBeCloseTo(
      0.12,
      12,
    );
    expect(story.number(`${route}.machine.brokeMass`) / story.number(`${route}.machine.gross`)).toBeCloseTo(
      broke / 100,
      12,
    );
  });

  test('the recycled content is 70.4 %: 52.8 after use and 17.6 before', () => {
    expect([printed(route, 'content'), printed(route, 'postConsumer'), printed(route, 'preConsumer')]).toEqual([
      '70.400000000',
      '52.800000000',
      '17.600000000',
    ]);
  });

  test('the pack may say 70 %, rounded down', () => {
    const told = footprint(valueOf(openCase(text))).routes.find(({ id }) => id === route)?.recycled;

    expect(told?.printable).toBe(70);
    expect(told?.content).toBeCloseTo(0.704, 12);
  });

  test('the recovered share of the fibre alone is 80 %, told apart from the content', () => {
    expect(printed(route, 'fibreOnly')).toBe('80.000000000');
  });
});

/** A figure that somebody might print, and the true one, both in per cent. */
function expectExcluded(wrong: number, expected: string, route: string): void {
  expect(wrong.toFixed(1)).toBe(expected);
  expect(Math.abs(wrong - Number(printed(route, 'content')))).toBeGreaterThan(4);
}

describe('the wrong answers', () => {
  test('82.8 % would be what was bought over the product, losses and all', () => {
    // The recovered lines keep 85 %: 0.704/0.85 = 82.8 %.
    const [collected, cuttings] = ['collected', 'cuttings'].map((line) => story.number(`little.${line}.feed`));
    const product = story.number('little.machine.fresh');

    expectExcluded((100 * ((collected ?? NaN) + (cuttings ?? NaN))) / product, '82.8', 'little');
  });

  test('74.8 % would be with the fibre of 25 % broke counted as recycled', () => {
    // (0.75 x 0.704 + 0.25 x 0.88) = 0.748 of what runs to the reel.
    const recovered = story.number('much.collected.stock') + story.number('much.cuttings.stock');
    const brokeFibre = story.number('much.machine.brokeMass') * 0.88;

    expectExcluded((100 * (recovered + brokeFibre)) / story.number('much.machine.gross'), '74.8', 'much');
  });

  test('80 % would be with the filler left out of the whole', () => {
    const recovered = story.number('little.collected.stock') + story.number('little.cuttings.stock');

    expectExcluded((100 * recovered) / story.number('little.machine.stock'), '80.0', 'little');
  });
});

test('a line that loses more buys more and changes nothing in the content', () => {
  const wasteful = story.withChanges({ 'little.collected.prepare.removal.fibre': '40' });

  expect(wasteful.number('little.collected.feed')).toBeGreaterThan(story.number('little.collected.feed') * 1.4);
  expect((100 * wasteful.number('little.recycled.content')).toFixed(9)).toBe('70.400000000');
});
