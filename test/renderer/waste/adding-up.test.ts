import { describe, expect, it } from 'vitest';
import { addingUp, shownLess } from '../../../renderer/numbers/adding-up.ts';

describe('parts that must add up to a rounded whole', () => {
  it.each([
    // 0.4 + 0.4 + 0.4 is 1.2, shown as 1: one of three zeros takes it, and the first of equals at that.
    { parts: [0.4, 0.4, 0.4], whole: 1.2, decimals: 0, shown: [1, 0, 0] },
    { parts: [1.26, 2.27, 3.27], whole: 6.8, decimals: 1, shown: [1.2, 2.3, 3.3] },
    { parts: [0.29, 0.71], whole: 1, decimals: 2, shown: [0.29, 0.71] },
    { parts: [-0.44, 0.44], whole: 0, decimals: 1, shown: [-0.4, 0.4] },
    { parts: [], whole: 0, decimals: 1, shown: [] },
  ])('are shown as $shown for $parts', ({ parts, whole, decimals, shown }) => {
    expect(addingUp(parts, whole, decimals)).toEqual(shown);
  });

  it('are each rounded alone where one of them cannot be worked out', () => {
    expect(addingUp([0.26, Number.NaN], Number.NaN, 1)).toEqual([0.3, Number.NaN]);
  });

  it('differ by what a reader gets who takes one from the other', () => {
    expect(shownLess(1098.6, 1315.1, 1)).toBe(-216.5);
    expect(shownLess(0.3, 0.1, 1)).toBe(0.2);
  });
});
