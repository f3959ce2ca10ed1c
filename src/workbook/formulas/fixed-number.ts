import type { Node } from '../../kernel/graph/graph.ts';

/**
 * Whether a fixed number stands in formulas as it is: nothing, one, and counts such as 12 months. What has a unit or digits after the mark
 * stands in a cell of its own, where its unit is said.
 */
export function standsInFormulas(node: Node): boolean {
  if (node.operation.op !== 'constant') return false;
  const { digits } = node.operation;
  return digits === '0' || digits === '1' || (/^\d+$/u.test(digits) && node.unit.exponents.size === 0);
}
