import type { Bounds, OperationName, OperationOf } from '../expression/operation.ts';
import { type Graph, type Node, nodeAt } from '../graph/graph.ts';
import { inForce } from '../graph/input-declaration.ts';
import { Decimal } from './decimal-settings.ts';
import { Failure, type Reason } from './failure.ts';
import { type BoundTest, boundTests } from './keeps-bounds.ts';

export type DecimalOutcome = Decimal | Failure;

/** One decimal, or one failure, for each node of the graph. */
export type DecimalValues = readonly DecimalOutcome[];

/** Figures to use instead of those in force, as digits in each input's entry unit. */
export type Changes = ReadonlyMap<string, string>;

const zero = new Decimal(0);

/** What of a graph can be read once and used for every evaluation: fixed numbers, limits, and the figures in force. */
interface Prepared {
  readonly constants: readonly Decimal[];
  readonly tests: readonly (readonly BoundTest[])[];
  readonly inputs: ReadonlyMap<string, Decimal>;
}

type Step<Name extends OperationName> = (operation: OperationOf<Name>, args: readonly Decimal[]) => Decimal | Reason;
type Arithmetic = {
  readonly [Name in Exclude<OperationName, 'input' | 'constant' | 'whenAbove' | 'within'>]: Step<Name>;
};

// Zeros are common (a component that is absent stays absent through a whole line) and cheap to see.
const arithmetic: Arithmetic = {
  later: (_, [value = zero]) => value,
  same: (_, [value = zero]) => value,
  sum: (_, terms) => terms.reduce((sum, term) => (term.isZero() ? sum : sum.plus(term)), zero),
  subtract: (_, [left = zero, right = zero]) => (right.isZero() ? left : left.minus(right)),
  multiply: (_, [left = zero, right = zero]) => (left.isZero() || right.isZero() ? zero : left.times(right)),
  divide: (_, [left = zero, right = zero]) => {
    if (right.isZero()) return { kind: 'division by zero' };
    return left.isZero() ? zero : left.dividedBy(right);
  },
  power: (_, [base = zero, exponent = zero]) => {
    const result = base.pow(exponent);
    return result.isFinite() ? result : { kind: 'no real power', base: base.toString(), exponent: exponent.toString() };
  },
  lesser: (_, [left = zero, right = zero]) => (left.lessThan(right) ? left : right),
  greater: (_, [left = zero, right = zero]) => (left.greaterThan(right) ? left : right),
};

/** What has been worked out so far. */
type Found = readonly (DecimalOutcome | undefined)[];

/** What depends on the shape alone is shared by all graphs of one shape, whatever their figures. */
type Shape = Pick<Prepared, 'constants' | 'tests'>;
const shapes = new WeakMap<Graph['nodes'], Shape>();
const prepared = new WeakMap<Graph, Prepared>();

/** Works out every quantity of the graph in 34-digit decimals. */
export function evaluateDecimal(graph: Graph, changes: Changes = new Map()): DecimalValues {
  const reading = new DecimalReading(graph, changes);
  return graph.nodes.map((node) => reading.at(node.index));
}

/** The same reading, worked out only as far as it is asked: what nobody looks at costs nothing. */
export class DecimalReading {
  readonly #graph: Graph;
  readonly #ready: Prepared;
  readonly #inputs: ReadonlyMap<string, Decimal>;
  readonly #values: (DecimalOutcome | undefined)[];

  constructor(graph: Graph, changes: Changes = new Map()) {
    this.#graph = graph;
    this.#ready = prepared.get(graph) ?? prepare(graph);
    this.#inputs =
      changes.size === 0 ? this.#ready.inputs : new Map([...this.#ready.inputs, ...changedInputs(graph, changes)]);
    this.#values = new Array<DecimalOutcome | undefined>(graph.nodes.length);
  }

  at(index: number): DecimalOutcome {
    const open = [index];
    for (let next = open.at(-1); next !== undefined; next = open.at(-1)) {
      const node = nodeAt(this.#graph, next);
      const missing =
        this.#values[next] === undefined ? node.args.filter((arg) => this.#values[arg] === undefined) : [];
      if (missing.length > 0) {
        open.push(...missing);
        continue;
      }
      this.#values[next] ??= outcome(node, this.#values, this.#inputs, this.#ready);
      open.pop();
    }
    return this.#values[index] ?? zero;
  }
}

function prepare(graph: Graph): Prepared {
  const figures = graph.inputs.flatMap((input): [string, Decimal][] => {
    const digits = inForce(input);
    return digits === null ? [] : [[input.id, new Decimal(digits).times(input.factor)]];
  });
  const ready: Prepared = { ...(shapes.get(graph.nodes) ?? shapeOf(graph)), inputs: new Map(figures) };
  prepared.set(graph, ready);
  return ready;
}

function shapeOf({ nodes }: Graph): Shape {
  const shape = {
    constants: nodes.map(({ operation }) => (operation.op === 'constant' ? new Decimal(operation.digits) : zero)),
    tests: nodes.map(({ operation }) => (operation.op === 'within' ? boundTests(operation.bounds) : [])),
  };
  shapes.set(nodes, shape);
  return shape;
}

function changedInputs(graph: Graph, changes: Changes): [string, Decimal][] {
  return graph.inputs.flatMap((input): [string, Decimal][] => {
    const digits = changes.get(input.id);
    return digits === undefined ? [] : [[input.id, new Decimal(digits).times(input.factor)]];
  });
}

function outcome(node: Node, values: Found, inputs: ReadonlyMap<string, Decimal>, ready: Prepared): DecimalOutcome {
  const { operation, args, index } = node;
  if (operation.op === 'input') return inputs.get(operation.key) ?? new Failure(index, { kind: 'no value given' });
  if (operation.op === 'constant') return ready.constants[index] ?? zero;
  if (operation.op === 'whenAbove') return chosen(args, values);
  const found: Decimal[] = [];
  for (const arg of args) {
    const value = values[arg] ?? zero;
    if (value instanceof Failure) return value;
    found.push(value);
  }
  if (operation.op === 'within') return checked(found[0] ?? zero, index, operation.bounds, ready.tests[index] ?? []);
  const step = arithmetic[operation.op] as Step<OperationName>;
  const result = step(operation, found);
  return result instanceof Decimal ? result : new Failure(index, result);
}

/** Only the branch that is taken may fail: 1/n stands for r/(1-(1+r)^-n) where r is 0. */
function chosen(args: readonly number[], values: Found): DecimalOutcome {
  const [value = zero, limit = zero, above = zero, otherwise = zero] = args.map((arg) => values[arg] ?? zero);
  if (value instanceof Failure) return value;
  if (limit instanceof Failure) return limit;
  return value.greaterThan(limit) ? above : otherwise;
}

function checked(value: Decimal, at: number, bounds: Bounds, tests: readonly BoundTest[]): DecimalOutcome {
  return tests.some((breaks) => breaks(value))
    ? new Failure(at, { kind: 'outside', value: value.toString(), bounds })
    : value;
}
