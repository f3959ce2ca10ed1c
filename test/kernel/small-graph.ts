import { evaluateDecimal } from '../../src/kernel/evaluate/decimal.ts';
import { Failure } from '../../src/kernel/evaluate/failure.ts';
import { evaluateFloat, floatProgram } from '../../src/kernel/evaluate/float.ts';
import type { Quantity } from '../../src/kernel/expression/quantity.ts';
import { GraphBuilder } from '../../src/kernel/graph/graph-builder.ts';
import { type Graph, nodeAt, nodeNamed } from '../../src/kernel/graph/graph.ts';
import { plainInput } from './plain-input.ts';

/** A graph under construction with the few words a test needs. Ids serve as names. */
export class SmallGraph {
  readonly builder = new GraphBuilder();

  input(id: string, value: string | null, unit = '1'): Quantity {
    return this.builder.input(plainInput(id, value, unit), unit);
  }

  define(id: string, quantity: Quantity): Quantity {
    return this.builder.define({ id, label: `Label of ${id}`, unit: quantity.unit.text }, quantity);
  }

  build(): Graph {
    return this.builder.build();
  }
}

/** The decimal value of a named quantity as digits; a failure as its kind and the name (or operation) where it began. */
export function decimalAt(graph: Graph, id: string, changes?: ReadonlyMap<string, string>): string {
  const value = evaluateDecimal(graph, changes)[nodeNamed(graph, id).index];
  if (value === undefined) return 'no outcome';
  return value instanceof Failure ? `${value.reason.kind} at ${nameOf(graph, value.at)}` : value.toString();
}

export function floatAt(graph: Graph, id: string, changes?: ReadonlyMap<string, string>): number | undefined {
  return evaluateFloat(floatProgram(graph), changes)[nodeNamed(graph, id).index];
}

function nameOf(graph: Graph, index: number): string {
  const { declaration, operation } = nodeAt(graph, index);
  return declaration?.id ?? `an unnamed ${operation.op}`;
}
