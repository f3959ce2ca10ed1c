import { expect, it } from 'vitest';
import { massText, percentText } from '../../../renderer/screens/lines/mass-text.ts';

it.each([
  [689.53, '689.5'],
  [13.049, '13.05'],
  [0.0451, '0.045'],
  [0.00032, 'under 0.001'],
  [0, '0.00'],
  [Number.NaN, ''],
])('writes %d kg as “%s”', (mass, text) => {
  expect(massText(mass, 'en-GB')).toBe(text);
});

it('follows the separators of the locale', () => {
  expect(massText(1234.56, 'de-DE')).toBe('1.234,6');
  expect(percentText(0.9212, 'de-DE')).toBe('92,12');
});
