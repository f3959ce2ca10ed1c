import type { OpenCase } from '../index.ts';
import { nearest } from '../paper/nearest.ts';
import { Refusal } from './console.ts';

/** The id of a result of the case, or a sentence that says which are near. */
export function resultOf(open: OpenCase, id: string): string {
  if (open.model.graph.positions.has(id)) return id;
  throw new Refusal([unknown('figure', id, [...open.model.graph.positions.keys()])]);
}

export function inputOf(open: OpenCase, id: string): string {
  const known = open.model.graph.inputs.map((input) => input.id);
  if (known.includes(id)) return id;
  throw new Refusal([unknown('input', id, known)]);
}

function unknown(what: string, given: string, known: readonly string[]): string {
  const near = nearest(given, known);
  return `There is no ${what} "${given}" in this case${near.length === 0 ? '' : `; near to it are ${near.join(', ')}`}.`;
}
