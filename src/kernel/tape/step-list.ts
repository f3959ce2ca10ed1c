import { stepValue } from './step-value.ts';
import { type StepName, steps } from './tape.ts';

/** Where a value stands before slots are numbered: an input, a fixed number, or a step. */
export type Operand =
  | { readonly kind: 'input'; readonly place: number }
  | { readonly kind: 'fixed'; readonly value: number }
  | { readonly kind: 'step'; readonly index: number };

export interface Step {
  readonly name: StepName;
  readonly of: readonly Operand[];
}

/** Collects the steps of a tape, each once: what was reckoned before, or needs no reckoning, takes no step. */
export class StepList {
  readonly steps: Step[] = [];
  readonly #known = new Map<string, Operand>();

  take(name: StepName, of: readonly Operand[]): Operand {
    const [first, second] = of;
    if (of.every((operand) => operand.kind === 'fixed')) return folded(name, of);
    // A product with one, or a quotient by one, is the same number to the bit.
    if ((name === 'multiply' || name === 'divide') && first && second && isOne(second)) return first;
    if (name === 'multiply' && first && second && isOne(first)) return second;
    const key = keyOf(name, of);
    const known = this.#known.get(key);
    if (known !== undefined) return known;
    const made: Operand = { kind: 'step', index: this.steps.length };
    this.steps.push({ name, of });
    this.#known.set(key, made);
    return made;
  }
}

function folded(name: StepName, of: readonly (Operand & { readonly kind: 'fixed' })[]): Operand {
  const [a = NaN, b = NaN, c = NaN, d = NaN] = of.map((operand) => operand.value);
  return { kind: 'fixed', value: stepValue(steps[name], a, b, c, d) };
}

function isOne(operand: Operand): boolean {
  return operand.kind === 'fixed' && operand.value === 1;
}

/** Two terms or two factors may change places without changing a bit. */
function keyOf(name: StepName, of: readonly Operand[]): string {
  const parts = of.map(nameOf);
  if (name === 'add' || name === 'multiply') parts.sort();
  return `${name} ${parts.join(' ')}`;
}

function nameOf(operand: Operand): string {
  if (operand.kind === 'step') return String(operand.index);
  if (operand.kind === 'input') return `i${operand.place}`;
  return Object.is(operand.value, -0) ? 'f-0' : `f${operand.value}`;
}
