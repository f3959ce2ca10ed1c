import type { Problem } from '../case/problem.ts';
import { keepsBounds } from '../kernel/evaluate/keeps-bounds.ts';
import type { InputDeclaration } from '../kernel/graph/input-declaration.ts';
import { nearest } from '../paper/nearest.ts';

/** An id that is no input of the case, with those that may have been meant. */
export function unknownInput(id: string, inputs: ReadonlyMap<string, InputDeclaration>): Problem {
  return { kind: 'unknown input', id, near: nearest(id, [...inputs.keys()]) };
}

/** A figure, in the entry unit, that can never be true of an input. */
export function outside(input: InputDeclaration, given: string): readonly Problem[] {
  if (keepsBounds(given, input.allowed)) return [];
  const { id, label, entryUnit: unit, allowed } = input;
  return [{ kind: 'outside', id, label, given, unit, allowed }];
}
