import { expect, it } from 'vitest';
import { usableLocale } from '../../electron/number-locale.ts';

it.each([
  ['de-AT', 'de-AT'],
  ['fi-FI', 'fi-FI'],
  ['C', 'en-GB'],
  ['en_US.UTF-8', 'en-GB'],
  ['', 'en-GB'],
])('reads the region %j as %s', (reported, expected) => {
  expect(usableLocale(reported)).toBe(expected);
});
