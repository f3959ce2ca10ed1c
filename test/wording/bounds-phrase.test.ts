import { expect, it } from 'vitest';
import type { Bounds } from '../../src/kernel/expression/operation.ts';
import { boundsPhrase } from '../../src/wording/bounds-phrase.ts';

it.each<[Bounds, string, string]>([
  [{ least: '0', most: '100' }, '%', '0 to 100 %'],
  [{ least: '-10', most: '100' }, '%', '\u221210 to 100 %'],
  [{ above: '0' }, 't/year', 'more than 0 t/year'],
  [{ least: '0' }, '', 'at least 0'],
  [{ least: '0', below: '100' }, '%', 'at least 0 % and below 100 %'],
  [{ above: '0', most: '8784' }, 'h/year', 'more than 0 h/year and at most 8784 h/year'],
  [{ above: '-1', below: '1' }, '', 'more than \u22121 and below 1'],
  [{ most: '-5' }, 'GJ', 'at most \u22125 GJ'],
  [{}, '%', 'any number'],
])('bounds of %j with the unit "%s" are "%s"', (bounds, unit, phrase) => {
  expect(boundsPhrase(bounds, unit)).toBe(phrase);
});
