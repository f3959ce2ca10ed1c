import type { OperationName, OperationOf } from '../expression/operation.ts';
import type { Graph, Node } from '../graph/graph.ts';
import { inForce } from '../graph/input-declaration.ts';
import { Decimal } from './decimal-settings.ts';
import { Failure, type Reason } from './failure.ts';

export type DecimalOutcome = Decimal | Failure;

/** One decimal, or one failure, for each node of the graph. */
export type DecimalValues = readonly DecimalOutcome[];

/** Figures to use instead of those in force, as digits in each input's entry unit. */
export type Changes = ReadonlyMap<string, string>;

const zero = new Decimal(0);

type Step<Name extends OperationName> = (operation: OperationOf<Name>, args: readonly Decimal[]) => Decimal | Reason;
type Arithmetic = { readonly [Name in Exclude<OperationName, 'input' | 'constant' | 'whenAbove'>]: Step<Name> };

// Zeros are common (a component that is absent stays absent through a whole line) and cheap to see.
const arithmetic: Arithmetic = {
  later: (_, [value = zero]) => value,
  same: (_, [value = zero]) => value,
  sum: (_, terms) => terms.reduce((sum, term) => (term.isZero() ? sum : sum.plus(term)), zero),
  subtract: (_, [left = zero, right = zero]) => (right.isZero() ? left : left.minus(right)),
  multiply: (_, [left = zero, right = zero]) => (left.isZero() || right.isZero() ? zero : left.times(right)),
  divide: (_, [left = zero, right = zero]) => (right.isZero() ? { kind: 'division by zero' } : left.isZero() ? zero : left.dividedBy(right)),
  power: (_, [base = zero, exponent = zero]) => {
    const result = base.pow(exponent);
    return result.isFinite() ? result : { kind: 'no real power', base: base.toString(), exponent: exponent.toString() };
  },
  lesser: (_, [left = zero, right = zero]) => (left.lessThan(right) ? left : right),
  greater: (_, [left = zero, right = zero]) => (left.greaterThan(right) ? left : right),
  within: ({ bounds }, [value = zero]) => (isWithin(value, bounds) ? value : { kind: 'outside', value: value.toString(), bounds }),
};

function isWithin(value: Decimal, { least, most, above, below }: OperationOf<'within'>['bounds']): boolean {
  if (least !== undefined && value.lessThan(least)) return false;
  if (most !== undefined && value.greaterThan(most)) return false;
  if (above !== undefined && value.lessThanOrEqualTo(above)) return false;
  return !(below !== undefined && value.greaterThanOrEqualTo(below));
}

/** Works out every quantity of the graph in 34-digit decimals. */
export function evaluateDecimal(graph: Graph, changes: Changes = new Map()): DecimalValues {
  const values: DecimalOutcome[] = [];
  const inputs = decimalInputs(graph, changes);
  for (const node of graph.nodes) values.push(outcome(node, values, inputs));
  return values;
}

function decimalInputs(graph: Graph, changes: Changes): Map<string, Decimal> {
  const inputs = new Map<string, Decimal>();
  for (const input of graph.inputs) {
    const digits = changes.get(input.id) ?? inForce(input);
    if (digits !== null) inputs.set(input.id, new Decimal(digits).times(input.factor));
  }
  return inputs;
}

function outcome(node: Node, values: DecimalValues, inputs: ReadonlyMap<string, Decimal>): DecimalOutcome {
  const { operation, args, index } = node;
  switch (operation.op) {
    case 'input':
      return inputs.get(operation.key) ?? new Failure(index, { kind: 'no value given' });
    case 'constant':
      return new Decimal(operation.digits);
    case 'whenAbove':
      return chosen(args, values);
    default: {
      const found: Decimal[] = [];
      for (const arg of args) {
        const value = values[arg] ?? zero;
        if (value instanceof Failure) return value;
        found.push(value);
      }
      const step = arithmetic[operation.op] as Step<OperationName>;
      const result = step(operation, found);
      return result instanceof Decimal ? result : new Failure(index, result as Reason);
    }
  }
}

/** Only the branch that is taken may fail: 1/n stands for r/(1-(1+r)^-n) where r is 0. */
function chosen(args: readonly number[], values: DecimalValues): DecimalOutcome {
  const [value, limit, above, otherwise] = args.map((arg) => values[arg] ?? zero);
  if (value instanceof Failure) return value;
  if (limit instanceof Failure) return limit;
  return (value !== undefined && limit !== undefined && value.greaterThan(limit) ? above : otherwise) ?? zero;
}
