import { describe, expect, it } from 'vitest';
import { crossings } from '../../src/kernel/solve/crossings.ts';

describe('the crossings of a curve', () => {
  it('are all of them, from left to right, to the last digits', () => {
    const found = crossings((x) => (x + 2) * (x - 0.3) * (x - 5), -3, 6);

    expect(found).toHaveLength(3);
    [-2, 0.3, 5].forEach((root, k) => expect(found[k]).toBeCloseTo(root, 12));
  });

  it('are none where the curve keeps its sign', () => {
    expect(crossings((x) => x * x + 1, -3, 3)).toEqual([]);
  });

  it('include the ends of the range', () => {
    expect(crossings((x) => x - 1, 1, 2)).toEqual([1]);
    expect(crossings((x) => x - 2, 1, 2)).toEqual([2]);
  });

  it('leave out a jump over nothing: 1/x never is nothing', () => {
    expect(crossings((x) => 1 / x, -1.01, 1)).toEqual([]);
  });

  it('pass over stretches where the curve is no number', () => {
    const found = crossings((x) => (x < 0 ? NaN : x - 0.5), -1, 1);

    expect(found).toHaveLength(1);
    expect(found[0]).toBeCloseTo(0.5, 12);
  });
});
