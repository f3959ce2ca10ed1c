import type { Graph } from '../../src/kernel/graph/graph.ts';

/** The ids of all inputs and named quantities that a quantity is made of, itself included. */
export function madeOf(graph: Graph, id: string): ReadonlySet<string> {
  const start = graph.positions.get(id);
  if (start === undefined) throw new Error(`The model has no quantity "${id}"`);
  const seen = new Set<number>();
  const waiting = [start];
  for (let at = waiting.pop(); at !== undefined; at = waiting.pop()) {
    if (seen.has(at)) continue;
    seen.add(at);
    waiting.push(...(graph.nodes[at]?.args ?? []));
  }
  return new Set([...graph.positions].flatMap(([name, at]) => (seen.has(at) ? [name] : [])));
}

/** The ids of all quantities that have something of this one in them, itself included. */
export function madeFrom(graph: Graph, id: string): ReadonlySet<string> {
  const start = graph.positions.get(id);
  if (start === undefined) throw new Error(`The model has no quantity "${id}"`);
  const reached = new Set([start]);
  // Arguments are positions of earlier nodes, so one pass in order is enough.
  for (const { index, args } of graph.nodes) if (args.some((arg) => reached.has(arg))) reached.add(index);
  return new Set([...graph.positions].flatMap(([name, at]) => (reached.has(at) ? [name] : [])));
}
