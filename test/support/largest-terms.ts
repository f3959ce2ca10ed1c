import type { Graph } from '../../src/kernel/graph/graph.ts';

/**
 * For each node the size that its rounding error is measured by. A sum or difference is as uncertain as its largest term, however
 * little is left of it; a product or quotient carries the same share of uncertainty as the worse of its two sides, and a power and a
 * choice likewise. An input or a constant is measured by itself.
 */
export function largestTerms(graph: Graph, values: Float64Array): Float64Array {
  const scales = new Float64Array(graph.nodes.length);
  const size = (at: number): number => Math.abs(values[at]!);
  /** How many times larger the terms behind a value are than the value itself. */
  const inflation = (at: number): number => (size(at) === 0 ? 1 : scales[at]! / size(at));
  for (const { index, operation, args } of graph.nodes) {
    const [first = index, second = index] = args;
    switch (operation.op) {
      case 'sum':
      case 'subtract':
        scales[index] = Math.max(...args.map((arg) => scales[arg]!));
        break;
      case 'multiply':
        scales[index] = Math.max(size(first) * scales[second]!, scales[first]! * size(second));
        break;
      case 'divide':
        scales[index] = Math.max(scales[first]! / size(second), size(index) * inflation(second));
        break;
      case 'power':
        scales[index] = size(index) * Math.max(1, inflation(first) * size(second));
        break;
      case 'lesser':
      case 'greater':
        scales[index] = Math.max(scales[first]!, scales[second]!);
        break;
      case 'whenAbove':
        scales[index] = Math.max(scales[args[2]!]!, scales[args[3]!]!);
        break;
      case 'later':
      case 'same':
      case 'within':
        scales[index] = scales[first]!;
        break;
      case 'input':
      case 'constant':
        scales[index] = size(index);
    }
  }
  return scales;
}
