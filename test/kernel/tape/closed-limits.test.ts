import { describe, expect, test } from 'vitest';
import { closedLimits } from '../../../src/kernel/tape/closed-limits.ts';

describe('limits that may be reached', () => {
  test.each([
    // A double has 52 bits behind the first: above 1 the next stands 2^-52 further, below it 2^-53; next to nothing stands 2^-1074.
    ['above 1', { above: '1' }, 1 + 2 ** -52, Infinity],
    ['above -1', { above: '-1' }, -1 + 2 ** -53, Infinity],
    ['above nothing', { above: '0' }, 2 ** -1074, Infinity],
    ['below 1', { below: '1' }, -Infinity, 1 - 2 ** -53],
    ['below -1', { below: '-1' }, -Infinity, -1 - 2 ** -52],
    ['below nothing', { below: '0' }, -Infinity, -(2 ** -1074)],
    ['at least and below', { least: '0', below: '1' }, 0, 1 - 2 ** -53],
    ['two from the same side, of which the tighter binds', { least: '2', above: '1', most: '5' }, 2, 5],
  ])('stand where no number is left between: %s', (_, bounds, least, most) => {
    expect(closedLimits(bounds)).toEqual({ least, most });
  });

  test('are none where nothing binds', () => {
    expect(closedLimits({})).toBeNull();
  });
});
