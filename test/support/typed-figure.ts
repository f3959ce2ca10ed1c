import { type Outcome, outcome } from '../../src/case/problem.ts';
import { type Entry, givenFigure, splitTyped } from '../../src/paper/entry.ts';

/** Reads what a person typed into an input, in the input's own unit; without a unit that one is meant. */
export function typedFigure(entry: Entry, typed: string): Outcome<string> {
  const parts = splitTyped(typed);
  if (parts === null) return outcome('', [{ kind: 'not a number', id: entry.id, given: typed }]);
  const found = givenFigure(entry, { value: parts.digits, unit: parts.unit });
  return found.ok ? outcome(found.value.value, []) : found;
}
