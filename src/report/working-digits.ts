import type { Node } from '../kernel/graph/graph.ts';
import type { Working } from '../kernel/graph/working.ts';

const usual = 7;
/** What floating-point numbers hold. */
const most = 15;

/**
 * In how many significant digits the results in an equation are written: seven, and as many more as are lost where nearly equal
 * figures are taken from one another, so that whoever reckons it again finds what is shown.
 */
export function workingDigits(working: Working, valueOf: (node: Node) => number): number {
  return Math.min(most, usual + Math.ceil(lost(working, valueOf)));
}

function lost(working: Working, valueOf: (node: Node) => number): number {
  if (working.kind !== 'made') return 0;
  const before = Math.max(0, ...working.of.map((part) => lost(part, valueOf)));
  const { op } = working.node.operation;
  if (op !== 'sum' && op !== 'subtract') return before;
  const largest = Math.max(...working.of.map((part) => Math.abs(valueOf(part.node))));
  const here = Math.log10(largest / Math.abs(valueOf(working.node)));
  // Where all digits are lost the two are the same, and more digits would show no more.
  return here > 0 && here < most ? before + here : before;
}
