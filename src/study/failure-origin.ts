import type { Declaration } from '../kernel/expression/quantity.ts';
import { type Graph, nodeAt } from '../kernel/graph/graph.ts';

/** The name of what a failure began in: the first named quantity that is, or is made of, the step where it began. */
export function failureOrigin(graph: Graph, at: number): Declaration | null {
  const reached = new Set([at]);
  for (let index = at; index < graph.nodes.length; index += 1) {
    const { args, declaration } = nodeAt(graph, index);
    if (!reached.has(index) && !args.some((arg) => reached.has(arg))) continue;
    if (declaration !== null) return declaration;
    reached.add(index);
  }
  return null;
}
