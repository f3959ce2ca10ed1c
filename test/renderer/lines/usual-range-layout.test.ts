import { expect, it } from 'vitest';
import { layOutUsualRange } from '../../../renderer/screens/lines/usual-range-layout.ts';

it('puts a value within the usual range inside the box', () => {
  const range = layOutUsualRange({ low: '12', high: '30', value: '20' }, 116);

  expect(range?.isOutside).toBe(false);
  expect(range?.value).toBeGreaterThan(range?.from ?? Number.NaN);
  expect(range?.value).toBeLessThan(range?.to ?? Number.NaN);
});

it.each(['0.5', '400'])('keeps %s, far outside the usual range, on the line and says that it is outside', (value) => {
  const range = layOutUsualRange({ low: '12', high: '30', value }, 116);

  expect(range?.isOutside).toBe(true);
  expect(range?.value).toBeGreaterThanOrEqual(6);
  expect(range?.value).toBeLessThanOrEqual(110);
});

it('draws a range without a tick where nobody has given a figure', () => {
  expect(layOutUsualRange({ low: '12', high: '30', value: '' }, 116)?.value).toBeNull();
});

it.each([
  [null, '30'],
  ['12', null],
  ['5', '5'],
])('draws nothing where %s to %s is no range', (low, high) => {
  expect(layOutUsualRange({ low, high, value: '5' }, 116)).toBeNull();
});
