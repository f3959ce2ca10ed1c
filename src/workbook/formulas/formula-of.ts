import { type Graph, nodeAt } from '../../kernel/graph/graph.ts';
import { standsInFormulas } from './fixed-number.ts';
import { formulaStep } from './formula-reading.ts';
import { type Piece, single } from './piece.ts';

/** The formula of a node, without its equals sign, over the cells of other nodes. `cellOf` is null for nodes that have no cell of their own. */
export function formulaOf(graph: Graph, index: number, cellOf: (index: number) => string | null): string {
  // Formulas are kept short by cells of their own, so that this cannot go deep.
  const read = (at: number): Piece => {
    const cell = at === index ? null : cellOf(at);
    if (cell !== null) return single(cell);
    const node = nodeAt(graph, at);
    const { operation } = node;
    if (operation.op === 'input') throw new Error(`The input "${operation.key}" has no cell`);
    if (operation.op !== 'constant') return formulaStep(operation, node.args.map(read));
    if (!standsInFormulas(node) && at !== index) throw new Error(`The fixed number ${operation.digits} has no cell`);
    return single(operation.digits);
  };
  return read(index).text;
}
