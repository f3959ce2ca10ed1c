import type { Graph, Node } from '../../kernel/graph/graph.ts';
import { standsInFormulas } from './fixed-number.ts';

/** Unnamed steps of this many operations get a cell of their own when they are used twice: shorter ones read better where they are used. */
export const worthSharing = 3;

/** The most operations in one formula. A sum of many cells may be longer, for nothing in it can be set apart. */
const mostOperations = 16;

/**
 * The nodes that stand in cells of their own: inputs, fixed numbers that say a unit, every named quantity, and steps that would otherwise
 * be written twice or make a formula too long to read. `worthSharingAt` says from how many operations on a step is not written twice.
 */
export function ownCells(
  graph: Graph,
  worthSharingAt: (index: number) => number = () => worthSharing,
): ReadonlySet<number> {
  const uses = usesOf(graph);
  const own = new Set<number>();
  const sizes: number[] = [];
  const sizeOf = (index: number): number => (own.has(index) ? 0 : (sizes[index] ?? 0));
  for (const node of graph.nodes) {
    if (repeatsArguments(node)) for (const arg of node.args) if (sizeOf(arg) > 0) own.add(arg);
    sizes.push(sizeWithin(node, own, sizeOf));
    if (isNamedOrGiven(node) || ((uses[node.index] ?? 0) > 1 && sizeOf(node.index) >= worthSharingAt(node.index)))
      own.add(node.index);
  }
  return own;
}

function isNamedOrGiven(node: Node): boolean {
  return node.declaration !== null || (node.operation.op === 'constant' && !standsInFormulas(node));
}

/** Operations whose formula names an argument twice. */
function repeatsArguments({ operation }: Node): boolean {
  return operation.op === 'within' || operation.op === 'power';
}

/** Operations that a formula would hold; the largest parts are set apart until it is short enough. */
function sizeWithin(node: Node, own: Set<number>, sizeOf: (index: number) => number): number {
  const isStep = !['input', 'constant', 'later', 'same'].includes(node.operation.op);
  const size = (): number =>
    node.args.reduce((sum, arg) => sum + sizeOf(arg), isStep ? Math.max(1, node.args.length - 1) : 0);
  while (size() > mostOperations) {
    const largest = [...node.args].sort((a, b) => sizeOf(b) - sizeOf(a))[0];
    if (largest === undefined || sizeOf(largest) < worthSharing) break;
    own.add(largest);
  }
  return size();
}

function usesOf({ nodes }: Graph): readonly number[] {
  const uses = new Array<number>(nodes.length).fill(0);
  for (const { args } of nodes) for (const arg of args) uses[arg] = (uses[arg] ?? 0) + 1;
  return uses;
}
