import { type DecimalOutcome, DecimalReading } from '../kernel/evaluate/decimal.ts';
import { Failure } from '../kernel/evaluate/failure.ts';
import { type Graph, type Node, nodeAt } from '../kernel/graph/graph.ts';

/** The decimal reading of a graph, asked by name. Ids must be those of the graph. */
export class Values {
  readonly graph: Graph;
  readonly #reading: DecimalReading;

  constructor(graph: Graph) {
    this.graph = graph;
    this.#reading = new DecimalReading(graph);
  }

  at(node: Node): DecimalOutcome {
    return this.#reading.at(node.index);
  }

  of(id: string): DecimalOutcome {
    const index = this.graph.positions.get(id);
    if (index === undefined) throw new Error(`No quantity named "${id}"`);
    return this.at(nodeAt(this.graph, index));
  }

  has(id: string): boolean {
    return this.graph.positions.has(id);
  }

  /** As a floating-point number; NaN where it cannot be worked out. */
  number(id: string): number {
    const value = this.of(id);
    return value instanceof Failure ? NaN : value.toNumber();
  }

  /** Every digit; "" where it cannot be worked out. */
  exact(id: string): string {
    const value = this.of(id);
    return value instanceof Failure ? '' : value.toString();
  }
}
