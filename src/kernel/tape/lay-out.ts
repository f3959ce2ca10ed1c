import type { Graph } from '../graph/graph.ts';
import { inForce } from '../graph/input-declaration.ts';
import type { Operand, Step } from './step-list.ts';
import { stretches } from './stretches.ts';
import { type Tape, steps } from './tape.ts';

/** Numbers the slots and writes steps into typed arrays. `wanted` tells where each result stands. */
export function layOut({ inputs }: Graph, list: readonly Step[], wanted: ReadonlyMap<string, Operand>): Tape {
  const { order, ends } = stretches(list);
  const firstStep = inputs.length + fixedIn(list.map(({ of }) => of)) + fixedIn([[...wanted.values()]]);
  const slotOfStep = new Int32Array(list.length);
  order.forEach((step, place) => (slotOfStep[step] = firstStep + place));
  const fixed: number[] = [];
  const slotOf = (operand: Operand): number => {
    if (operand.kind === 'step') return slotOfStep[operand.index]!;
    return operand.kind === 'input' ? operand.place : inputs.length + fixed.push(operand.value) - 1;
  };
  const codes = new Uint8Array(list.length);
  const column = (): Int32Array => new Int32Array(list.length);
  const [first, second, third, fourth] = [column(), column(), column(), column()];
  order.forEach((step, place) => {
    const { name, of } = list[step]!;
    codes[place] = steps[name];
    const [a = 0, b = a, c = a, d = a] = of.map(slotOf);
    first[place] = a;
    second[place] = b;
    third[place] = c;
    fourth[place] = d;
  });
  const results = new Map([...wanted].map(([id, operand]) => [id, slotOf(operand)]));
  return {
    inputIds: inputs.map((input) => input.id),
    inputPlaces: new Map(inputs.map((input, place) => [input.id, place])),
    inputFactors: Float64Array.from(inputs, (input) => Number(input.factor)),
    inputValues: Float64Array.from(inputs, (input) => Number(inForce(input) ?? NaN) * Number(input.factor)),
    fixed: Float64Array.from(fixed),
    codes,
    first,
    second,
    third,
    fourth,
    ends: Int32Array.from(ends),
    firstStep,
    slots: firstStep + list.length,
    results,
  };
}

function fixedIn(lists: readonly (readonly Operand[])[]): number {
  let count = 0;
  for (const list of lists) for (const { kind } of list) if (kind === 'fixed') count += 1;
  return count;
}
