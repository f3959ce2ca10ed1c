import type { Declaration } from '../expression/quantity.ts';
import type { Operation } from '../expression/operation.ts';
import type { Unit } from '../units/unit.ts';
import type { InputDeclaration } from './input-declaration.ts';

/** One step of a graph. Arguments are positions of earlier nodes, so that one pass in order works everything out. */
export interface Node {
  readonly index: number;
  readonly operation: Operation;
  readonly args: readonly number[];
  readonly unit: Unit;
  readonly declaration: Declaration | null;
}

/** A calculation in working order. It holds the shape only: which inputs exist, not what they are. */
export interface Graph {
  readonly nodes: readonly Node[];
  readonly inputs: readonly InputDeclaration[];
  /** Position of each named quantity and of each input. */
  readonly positions: ReadonlyMap<string, number>;
}

export function nodeAt(graph: Graph, index: number): Node {
  const node = graph.nodes[index];
  if (node === undefined) throw new Error(`No node ${String(index)}`);
  return node;
}

/** Throws where there is no such quantity: ids that come from a person are looked up with `graph.positions` first. */
export function nodeNamed(graph: Graph, id: string): Node {
  const index = graph.positions.get(id);
  if (index === undefined) throw new Error(`No quantity named "${id}"`);
  return nodeAt(graph, index);
}
