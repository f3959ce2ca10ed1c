import { describe, expect, test } from 'vitest';
import { cascade } from '../../src/paper/stages/cascade.ts';
import { quotientRemoval } from '../../src/paper/stages/screening-laws.ts';
import { plain, valueOf, valuesOf } from '../support/quantity-value.ts';

// Source: worked by hand below from the balance of each stage; no published worked example of a feedback cascade was found.
describe('three stages that reject 25, 30 and 40 % of their own feed, accepts going back to the stage before', () => {
  // From the last stage up, share finally lost of what enters: 0.4; then 0.3 x 0.4 / (1 - 0.3 x 0.6) = 0.14634146;
  // then 0.25 x 0.14634146 / (1 - 0.25 x 0.85365854) = 0.04651163.
  // Gross feeds: stage 1 takes 1 / (1 - 0.25 x 0.85365854) = 1.27131783; stage 2 takes 0.25 x 1.27131783 / (1 - 0.18) = 0.38759690;
  // stage 3 takes 0.3 x 0.38759690 = 0.11627907, and rejects 0.4 of it: 0.04651163 again.
  const rates = ['0.25', '0.3', '0.4'].map(plain);

  test('lose 4.651163 % of the feed', () => {
    expect(100 * valueOf(cascade(rates).loss)).toBeCloseTo(4.651163, 6);
  });

  test('take gross feeds of 1.27131783, 0.38759690 and 0.11627907', () => {
    const feeds = valuesOf(cascade(rates).feeds);

    expect(feeds.map((feed) => feed.toFixed(8))).toEqual(['1.27131783', '0.38759690', '0.11627907']);
  });

  test('lose what the last stage rejects of its gross feed', () => {
    const [, , last = NaN] = valuesOf(cascade(rates).feeds);

    expect(0.4 * last).toBeCloseTo(valueOf(cascade(rates).loss), 15);
  });

  test('lose 3 % when every accept goes forward, for then the shares multiply', () => {
    // 0.25 x 0.3 x 0.4 = 0.03.
    expect(valueOf(cascade(rates, [true, true, true]).loss)).toBeCloseTo(0.03, 15);
  });
});

// Source: E = R / (1 - Q + Q R), G. L. Nelson, Tappi 1981, from memory; the numbers are derived.
describe('one stage that rejects a fifth of the fibre', () => {
  test.each([
    // 0.2 / (1 - 0.9 + 0.18) = 0.2 / 0.28
    { quotient: '0.9', removed: 0.714286, meaning: 'removes 71.4286 % of a component of quotient 0.9' },
    { quotient: '0', removed: 0.2, meaning: 'splits a component of quotient 0 as the fibre' },
    { quotient: '0.999999999', removed: 1, meaning: 'removes all of a component whose quotient nears 1' },
  ])('$meaning', ({ quotient, removed }) => {
    expect(valueOf(quotientRemoval(plain('0.2'), plain(quotient)))).toBeCloseTo(removed, 6);
  });

  test('lets a component that passes with the water leave at the volumetric rate', () => {
    // With a reject thickened 1.8 times, R_v = 0.2/1.8; the quotient that says the same is -(1.8 - 1)/(1 - 0.2) = -1.
    expect(valueOf(quotientRemoval(plain('0.2'), plain('-1')))).toBeCloseTo(0.2 / 1.8, 15);
  });
});
