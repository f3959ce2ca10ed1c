import { expect, test } from 'vitest';
import { readReadings } from '../../../renderer/screens/lots/read-readings.ts';

test.each([
  ['12.1 13.4 11.8', '.', '12.1 13.4 11.8'],
  ['12.1, 13.4, 11.8', '.', '12.1 13.4 11.8'],
  ['12.1,13.4,11.8', '.', '12.1 13.4 11.8'],
  ['12,1; 13,4;11,8', ',', '12.1 13.4 11.8'],
  ['12,1\n13,4\t11,8 %', ',', '12.1 13.4 11.8'],
  ['12', '.', '12'],
  // A comma between two figures of a person who writes points is a slip of the finger, not two readings.
  ['11,5', '.', '11.5'],
])('reads %j with the mark %s as %s', (text, mark, expected) => {
  expect(readReadings(text, mark)).toBe(expected);
});

test.each(['wet', '12.1 about', '12,345', '-3'])('does not guess at %j', (text) => {
  expect(readReadings(text, '.')).toBeNull();
});
