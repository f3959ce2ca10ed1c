import type { Bounds } from '../expression/operation.ts';
import { type Graph, type Node, nodeAt, nodeNamed } from '../graph/graph.ts';
import { closedLimits } from './closed-limits.ts';
import { layOut } from './lay-out.ts';
import { type Operand, StepList } from './step-list.ts';
import type { StepName, Tape } from './tape.ts';

/** The greatest whole exponent that is written out as products: they cost far less than a power. */
const greatestProduct = 8;

const compiled = new WeakMap<Graph, Map<string, Tape>>();

/**
 * Compiles what the wanted results need: names and forward references vanish, fixed parts are reckoned once, equal parts too, sums become
 * steps of up to four terms in order, whole powers become products, and everything else is left out. A graph never changes, so that a tape
 * is kept as long as its graph; it must not be changed either.
 */
export function compileTape(graph: Graph, wanted: readonly string[]): Tape {
  const tapes = compiled.get(graph) ?? new Map<string, Tape>();
  compiled.set(graph, tapes);
  const key = wanted.join('\n');
  const tape = tapes.get(key) ?? freshTape(graph, wanted);
  tapes.set(key, tape);
  return tape;
}

function freshTape(graph: Graph, wanted: readonly string[]): Tape {
  const compiler = new Compiler(graph);
  const operands = new Map(wanted.map((id) => [id, compiler.operandOf(nodeNamed(graph, id))]));
  return layOut(graph, compiler.list.steps, operands);
}

class Compiler {
  readonly list = new StepList();
  readonly #graph: Graph;
  readonly #places: ReadonlyMap<string, number>;
  readonly #done: (Operand | undefined)[];

  constructor(graph: Graph) {
    this.#graph = graph;
    this.#places = new Map(graph.inputs.map((input, place) => [input.id, place]));
    this.#done = new Array<Operand | undefined>(graph.nodes.length);
  }

  /** Nodes stand in working order, so one pass over what is needed suffices. */
  operandOf(node: Node): Operand {
    const needed = this.#needed(node);
    for (let index = 0; index <= node.index; index += 1) {
      if (needed[index] === 1) this.#done[index] ??= this.#compiled(nodeAt(this.#graph, index));
    }
    return this.#at(node.index);
  }

  #needed(node: Node): Uint8Array {
    const needed = new Uint8Array(node.index + 1);
    needed[node.index] = 1;
    for (let index = node.index; index >= 0; index -= 1) {
      if (needed[index] === 1) for (const arg of nodeAt(this.#graph, index).args) needed[arg] = 1;
    }
    return needed;
  }

  #at(index: number): Operand {
    const operand = this.#done[index];
    if (operand === undefined) throw new Error(`Node ${String(index)} is used before it is made`);
    return operand;
  }

  #compiled({ operation, args }: Node): Operand {
    const of = args.map((arg) => this.#at(arg));
    switch (operation.op) {
      case 'input':
        return { kind: 'input', place: this.#places.get(operation.key) ?? 0 };
      case 'constant':
        return { kind: 'fixed', value: Number(operation.digits) };
      case 'same':
      case 'later':
        return of[0] ?? { kind: 'fixed', value: NaN };
      case 'sum':
        return this.#sum(of);
      case 'power':
        return this.#power(of);
      case 'within':
        return this.#within(of, operation.bounds);
      default:
        return this.list.take(operation.op, of);
    }
  }

  /** From left to right, up to three further terms a step. */
  #sum([start, ...terms]: readonly Operand[]): Operand {
    let sum: Operand = start ?? { kind: 'fixed', value: 0 };
    for (let at = 0; at < terms.length; at += 3) {
      const further = terms.slice(at, at + 3);
      const name: StepName = further.length === 1 ? 'add' : further.length === 2 ? 'addThree' : 'addFour';
      sum = this.list.take(name, [sum, ...further]);
    }
    return sum;
  }

  #power([base, exponent]: readonly Operand[]): Operand {
    if (base === undefined || exponent === undefined) return { kind: 'fixed', value: NaN };
    const whole =
      exponent.kind === 'fixed' && Number.isInteger(exponent.value) && Math.abs(exponent.value) <= greatestProduct
        ? exponent.value
        : null;
    if (whole === null) return this.list.take('power', [base, exponent]);
    const one: Operand = { kind: 'fixed', value: 1 };
    const product = Array.from({ length: Math.abs(whole) }, () => base).reduce<Operand>(
      (made, factor) => this.list.take('multiply', [made, factor]),
      one,
    );
    return whole < 0 ? this.list.take('divide', [one, product]) : product;
  }

  #within(of: readonly Operand[], bounds: Bounds): Operand {
    const [value = { kind: 'fixed', value: NaN }] = of;
    const limits = closedLimits(bounds);
    if (limits === null) return value;
    const fixed = (limit: number): Operand => ({ kind: 'fixed', value: limit });
    return this.list.take('within', [value, fixed(limits.least), fixed(limits.most)]);
  }
}
