import { type Graph, type Node, nodeAt, nodeNamed } from './graph.ts';

/** One step of a working: an operation, or a leaf that is named (an input or a quantity explained elsewhere) or fixed. */
export type Working =
  | { readonly kind: 'named'; readonly node: Node }
  | { readonly kind: 'fixed'; readonly node: Node; readonly digits: string }
  | { readonly kind: 'made'; readonly node: Node; readonly of: readonly Working[] };

/**
 * How a named quantity is worked out, down to the next names. A step that is used twice is one object in two places, so that the whole
 * is never larger than the graph.
 */
export function working(graph: Graph, id: string): Working {
  const root = nodeNamed(graph, id);
  const steps = new Map<Node, Working>();
  // Parts stand before what is made of them in the graph: taken in its order, each step finds its parts ready, at any depth.
  for (const node of unfolded(graph, root).sort((a, b) => a.index - b.index)) {
    const isLeaf = node !== root && node.declaration !== null;
    steps.set(node, isLeaf ? { kind: 'named', node } : opened(graph, node, steps));
  }
  return steps.get(root) ?? { kind: 'named', node: root };
}

function opened(graph: Graph, node: Node, steps: ReadonlyMap<Node, Working>): Working {
  if (node.operation.op === 'input') return { kind: 'named', node };
  if (node.operation.op === 'constant') return { kind: 'fixed', node, digits: node.operation.digits };
  return { kind: 'made', node, of: node.args.flatMap((arg) => steps.get(nodeAt(graph, arg)) ?? []) };
}

/** The quantity itself and what it is made of, down to the next names; each once, in the order met. */
function unfolded(graph: Graph, root: Node): Node[] {
  const met = new Set<Node>();
  const waiting = [root];
  for (let node = waiting.pop(); node !== undefined; node = waiting.pop()) {
    if (met.has(node)) continue;
    met.add(node);
    if (node !== root && node.declaration !== null) continue;
    for (const arg of [...node.args].reverse()) waiting.push(nodeAt(graph, arg));
  }
  return [...met];
}

/** The named quantities and inputs that a quantity is directly made of, each once, in the order met. */
export function ingredients(graph: Graph, id: string): readonly Node[] {
  const root = nodeNamed(graph, id);
  return unfolded(graph, root).filter((node) => node !== root && node.declaration !== null);
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
