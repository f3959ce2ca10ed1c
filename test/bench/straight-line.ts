import { type Tape, freshSlots } from '../../src/kernel/tape/tape.ts';
import { type StepWords, fixedIn, stepText } from './step-text.ts';

/** The result of a tape as plain JavaScript works it out: inputs stand in their places in `values`. */
export interface StraightLine {
  readonly form: string;
  readonly run: (values: Float64Array) => number;
}

/** What a person would write by hand, with the same limits and choices as the tape has. */
const words: StepWords = {
  add: ([a, b]) => `${a} + ${b}`,
  subtract: ([a, b]) => `${a} - ${b}`,
  multiply: ([a, b]) => `${a} * ${b}`,
  divide: ([a, b]) => `${b} === 0 ? NaN : ${a} / ${b}`,
  addThree: ([a, b, c]) => `${a} + ${b} + ${c}`,
  addFour: ([a, b, c, d]) => `${a} + ${b} + ${c} + ${d}`,
  power: ([a, b]) => `finite(Math.pow(${a}, ${b}))`,
  lesser: ([a, b]) => `Math.min(${a}, ${b})`,
  greater: ([a, b]) => `Math.max(${a}, ${b})`,
  whenAbove: ([a, b, c, d]) => `${a} > ${b} ? ${c} : ${a} <= ${b} ? ${d} : NaN`,
  within: ([a, b, c]) => `${a} >= ${b} && ${a} <= ${c} ? ${a} : NaN`,
};

// The compiler of V8 leaves functions alone that are too long for it: then several shorter ones are faster than one.
const lengths = [Infinity, 800, 200];

/**
 * The model as straight-line JavaScript: one statement a step on local variables, each behind what it is made of, as a person writes them;
 * in one function and, in other forms, in several that hand on through the array. The fastest form is what everything is measured against.
 * Throws where one does not give the value of the tape.
 */
export function straightLines(tape: Tape, result: number, value: number): readonly StraightLine[] {
  const order = writtenOrder(tape, result);
  return lengths.map((length) => {
    const form = length === Infinity ? 'in one function' : `in functions of ${length} statements`;
    const run = written(tape, result, order, Math.min(length, order.length));
    const given = run(freshSlots(tape));
    if (!Object.is(given, value)) throw new Error(`Straight-line code ${form} gives ${given}, the tape ${value}`);
    return { form, run };
  });
}

/** Steps in the order a person would write them: each soon after what it is made of, so that few values must be kept at a time. */
function writtenOrder(tape: Tape, result: number): readonly number[] {
  const order: number[] = [];
  const written = new Set<number>();
  const write = (slot: number): void => {
    const step = slot - tape.firstStep;
    if (step < 0 || written.has(step)) return;
    written.add(step);
    for (const reads of [tape.first, tape.second, tape.third, tape.fourth]) write(reads[step]!);
    order.push(step);
  };
  write(result);
  return order;
}

function written(
  tape: Tape,
  result: number,
  order: readonly number[],
  length: number,
): (values: Float64Array) => number {
  const parts = Array.from({ length: Math.ceil(order.length / length) }, (_, part) =>
    order.slice(part * length, (part + 1) * length),
  );
  const lastPart = lastReaders(tape, parts);
  lastPart[result] = parts.length;
  const functions = parts.map((part, at) => {
    const statements = statementsOf(tape, part, (slot) => lastPart[slot]! > at);
    return `function part${at}(values) {\n${statements.join('\n')}\n}`;
  });
  const calls = functions.map((_, part) => `part${part}(values);`).join(' ');
  const source = `'use strict';
const finite = (value) => (Number.isFinite(value) ? value : NaN);
${functions.join('\n')}
return (values) => { ${calls} return values[${result}]; };`;
  // eslint-disable-next-line @typescript-eslint/no-implied-eval -- the code that everything is measured against is made from the tape
  const made = new Function(source) as () => (values: Float64Array) => number;
  return made();
}

/** The last part in which each slot is read. */
function lastReaders(tape: Tape, parts: readonly (readonly number[])[]): Int32Array {
  const last = new Int32Array(tape.slots);
  parts.forEach((part, at) => {
    for (const step of part) {
      for (const reads of [tape.first, tape.second, tape.third, tape.fourth]) last[reads[step]!] = at;
    }
  });
  return last;
}

/** Statements of one part. What a later part needs is written to the array, all else stays in a variable. */
function statementsOf(tape: Tape, part: readonly number[], isHandedOn: (slot: number) => boolean): readonly string[] {
  const lines: string[] = [];
  const local = new Set<number>();
  const nameOf = (slot: number): string => {
    const fixed = fixedIn(tape, slot);
    if (fixed !== undefined) return `(${String(fixed)})`;
    if (!local.has(slot)) lines.push(`const s${slot} = values[${slot}];`);
    local.add(slot);
    return `s${slot}`;
  };
  for (const step of part) {
    const out = tape.firstStep + step;
    const text = stepText(tape, step, words, nameOf);
    local.add(out);
    lines.push(`const s${out} = ${text};`);
    if (isHandedOn(out)) lines.push(`values[${out}] = s${out};`);
  }
  return lines;
}
