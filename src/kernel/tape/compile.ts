import type { Bounds } from '../expression/operation.ts';
import { type Graph, type Node, nodeAt, nodeNamed } from '../graph/graph.ts';
import { inForce } from '../graph/input-declaration.ts';
import { runStep } from './run-step.ts';
import { type StepName, type Tape, steps } from './tape.ts';

/** Where a value stands before slots are numbered: an input, a fixed number, or a step. */
type Operand =
  | { readonly kind: 'input'; readonly place: number }
  | { readonly kind: 'fixed'; readonly value: number }
  | { readonly kind: 'step'; readonly index: number };

interface Step {
  readonly name: StepName;
  readonly of: readonly Operand[];
  readonly bounds: Bounds;
}

/** The greatest whole exponent that is written out as products: they cost far less than a power. */
const greatestProduct = 8;

/**
 * Compiles what the wanted results need: names and forward references vanish, fixed parts are reckoned once, sums become steps of two in
 * order, whole powers become products, and everything else is left out.
 */
export function compileTape(graph: Graph, wanted: readonly string[]): Tape {
  const compiler = new Compiler(graph);
  const operands = new Map(wanted.map((id) => [id, compiler.operandOf(nodeNamed(graph, id))]));
  return compiler.tape(operands);
}

class Compiler {
  readonly #graph: Graph;
  readonly #places: ReadonlyMap<string, number>;
  readonly #done: (Operand | undefined)[];
  readonly #steps: Step[] = [];

  constructor(graph: Graph) {
    this.#graph = graph;
    this.#places = new Map(graph.inputs.map((input, place) => [input.id, place]));
    this.#done = new Array<Operand | undefined>(graph.nodes.length);
  }

  /** Nodes stand in working order, so one pass over what is needed suffices. */
  operandOf(node: Node): Operand {
    for (const index of this.#needed(node)) this.#done[index] ??= this.#compiled(nodeAt(this.#graph, index));
    return this.#at(node.index);
  }

  #needed(node: Node): readonly number[] {
    const found = new Set<number>();
    const open = [node.index];
    for (let next = open.pop(); next !== undefined; next = open.pop()) {
      if (found.has(next) || this.#done[next] !== undefined) continue;
      found.add(next);
      open.push(...nodeAt(this.#graph, next).args);
    }
    return [...found].sort((a, b) => a - b);
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
        return of.reduce((sum, term) => this.#step('add', [sum, term]));
      case 'power':
        return this.#power(of);
      case 'within':
        return this.#step('within', of, operation.bounds);
      default:
        return this.#step(operation.op, of);
    }
  }

  #power([base, exponent]: readonly Operand[]): Operand {
    if (base === undefined || exponent === undefined) return { kind: 'fixed', value: NaN };
    const whole =
      exponent.kind === 'fixed' && Number.isInteger(exponent.value) && Math.abs(exponent.value) <= greatestProduct
        ? exponent.value
        : null;
    if (whole === null) return this.#step('power', [base, exponent]);
    const one: Operand = { kind: 'fixed', value: 1 };
    const product = Array.from({ length: Math.abs(whole) }, () => base).reduce<Operand>(
      (made, factor) => (made === one ? factor : this.#step('multiply', [made, factor])),
      one,
    );
    return whole < 0 ? this.#step('divide', [one, product]) : product;
  }

  #step(name: StepName, of: readonly Operand[], bounds: Bounds = {}): Operand {
    const fixed = of.flatMap((operand) => (operand.kind === 'fixed' ? [operand.value] : []));
    if (fixed.length === of.length) return { kind: 'fixed', value: runStep(steps[name], fixed, bounds) };
    this.#steps.push({ name, of, bounds });
    return { kind: 'step', index: this.#steps.length - 1 };
  }

  tape(operands: ReadonlyMap<string, Operand>): Tape {
    const { inputs } = this.#graph;
    const fixed = new Map<number, number>();
    for (const { value } of [...this.#steps.flatMap((step) => step.of), ...operands.values()].filter(
      (operand) => operand.kind === 'fixed',
    )) {
      if (!fixed.has(value)) fixed.set(value, fixed.size);
    }
    const firstStep = inputs.length + fixed.size;
    const slotOf = (operand: Operand | undefined): number => {
      if (operand === undefined) return 0;
      if (operand.kind === 'input') return operand.place;
      return operand.kind === 'fixed' ? inputs.length + (fixed.get(operand.value) ?? 0) : firstStep + operand.index;
    };
    const reads = (which: number): Int32Array => Int32Array.from(this.#steps, (step) => slotOf(step.of[which]));
    const limit = (which: keyof Bounds, none: number): Float64Array =>
      Float64Array.from(this.#steps, (step) => Number(step.bounds[which] ?? none));
    return {
      inputIds: inputs.map((input) => input.id),
      inputPlaces: this.#places,
      inputFactors: Float64Array.from(inputs, (input) => Number(input.factor)),
      inputValues: Float64Array.from(inputs, (input) => Number(inForce(input) ?? NaN) * Number(input.factor)),
      fixed: Float64Array.from(fixed.keys()),
      codes: Uint8Array.from(this.#steps, (step) => steps[step.name]),
      first: reads(0),
      second: reads(1),
      third: reads(2),
      fourth: reads(3),
      limits: {
        least: limit('least', -Infinity),
        most: limit('most', Infinity),
        above: limit('above', -Infinity),
        below: limit('below', Infinity),
      },
      firstStep,
      slots: firstStep + this.#steps.length,
      results: new Map([...operands].map(([id, operand]) => [id, slotOf(operand)])),
    };
  }
}
