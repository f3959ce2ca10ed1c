import { type Graph, type Node, nodeAt, nodeNamed } from './graph.ts';

/** One step of a working: an operation, or a leaf that is named (an input or a quantity explained elsewhere) or fixed. */
export type Working =
  | { readonly kind: 'named'; readonly node: Node }
  | { readonly kind: 'fixed'; readonly node: Node; readonly digits: string }
  | { readonly kind: 'made'; readonly node: Node; readonly of: readonly Working[] };

/** How a named quantity is worked out, down to the next names. */
export function working(graph: Graph, id: string): Working {
  return opened(graph, nodeNamed(graph, id));
}

function opened(graph: Graph, node: Node): Working {
  if (node.operation.op === 'input') return { kind: 'named', node };
  if (node.operation.op === 'constant') return { kind: 'fixed', node, digits: node.operation.digits };
  return { kind: 'made', node, of: node.args.map((arg) => closed(graph, nodeAt(graph, arg))) };
}

function closed(graph: Graph, node: Node): Working {
  return node.declaration === null ? opened(graph, node) : { kind: 'named', node };
}

/** The named quantities and inputs that a quantity is directly made of, each once, in the order met. */
export function ingredients(graph: Graph, id: string): readonly Node[] {
  const found = new Set<Node>();
  const visit = (step: Working): void => {
    if (step.kind === 'named') found.add(step.node);
    if (step.kind === 'made') step.of.forEach(visit);
  };
  const start = working(graph, id);
  if (start.kind === 'made') start.of.forEach(visit);
  return [...found];
}

/** The named quantities that are directly made of this one: what would move if it moved. */
export function madeOf(graph: Graph, id: string): readonly Node[] {
  const reached = new Set([nodeNamed(graph, id).index]);
  const found: Node[] = [];
  for (const node of graph.nodes) {
    if (!node.args.some((arg) => reached.has(arg))) continue;
    if (node.declaration === null) reached.add(node.index);
    else found.push(node);
  }
  return found;
}
