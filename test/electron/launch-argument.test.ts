import { resolve } from 'node:path';
import { expect, it } from 'vitest';
import { caseOfArguments } from '../../electron/launch-argument.ts';

it.each([
  [['tonne', 'mill.tonne'], '/cases/mill.tonne'],
  [['tonne', '--flag', '/elsewhere/Mill.TONNE'], '/elsewhere/Mill.TONNE'],
  [['electron', '.', 'first.tonne', 'second.tonne'], '/cases/second.tonne'],
])('finds the case named by %j', (given, expected) => {
  expect(caseOfArguments(given, '/cases')).toBe(resolve(expected));
});

it.each([[['tonne']], [['electron', '.']], [['tonne', '--open=mill.tonne']], [['tonne', 'notes.txt']]])(
  'finds none in %j',
  (given) => {
    expect(caseOfArguments(given, '/cases')).toBeNull();
  },
);
