import type { Node } from '../kernel/graph/graph.ts';
import type { Working } from '../kernel/graph/working.ts';

// Results carry 34 significant digits; a sum of a few dozen terms may be wrong in the last two or three.
const digitsKept = 1e30;

/** Whether a sum or difference holds nothing but the rounding of its terms, as a balance does that closes. */
export function isOnlyRounding(working: Working, valueOf: (node: Node) => number): boolean {
  if (working.kind !== 'made') return false;
  const { op } = working.node.operation;
  if (op !== 'sum' && op !== 'subtract') return false;
  const largest = Math.max(...working.of.map((part) => Math.abs(valueOf(part.node))));
  return Math.abs(valueOf(working.node)) * digitsKept < largest;
}
