import { describe, expect, test } from 'vitest';
import type { Graph } from '../../../src/kernel/graph/graph.ts';
import { layOut } from '../../../src/kernel/tape/lay-out.ts';
import { runTape } from '../../../src/kernel/tape/run.ts';
import { slopesOf } from '../../../src/kernel/tape/slopes.ts';
import type { Operand, Step } from '../../../src/kernel/tape/step-list.ts';
import { type Tape, freshSlots, resultSlot } from '../../../src/kernel/tape/tape.ts';
import { plainInput } from '../plain-input.ts';

/** The sum of an input, so many times over: each step adds it to the one before. */
function longSum(steps: number, input: string): Tape {
  const graph: Graph = { nodes: [], inputs: [plainInput('a', input)], positions: new Map() };
  const added: Operand = { kind: 'input', place: 0 };
  const list = Array.from({ length: steps }, (_, step): Step => {
    const before: Operand = step === 0 ? added : { kind: 'step', index: step - 1 };
    return { name: 'add', of: [before, added] };
  });
  return layOut(graph, list, new Map([['sum', { kind: 'step', index: steps - 1 }]]));
}

function sumOf(tape: Tape): number | undefined {
  const values = freshSlots(tape);
  runTape(tape, values);
  return values[resultSlot(tape, 'sum')];
}

describe('the machine that tapes are worked in', () => {
  test('gives each of two tapes its own, by turns', () => {
    const [short, long] = [longSum(2, '5'), longSum(9, '7')];

    // 5 three times, 7 ten times.
    expect([sumOf(short), sumOf(long), sumOf(short), sumOf(long)]).toEqual([15, 70, 15, 70]);
  });

  test('makes room for a tape longer than usual, and still works short ones', () => {
    expect(sumOf(longSum(100_000, '1'))).toBe(100_001);
    expect(sumOf(longSum(3, '1'))).toBe(4);
  });

  test('hands the slope of a long sum back: one for each time the input was added', () => {
    const tape = longSum(100_000, '1');
    expect([...slopesOf(tape, freshSlots(tape), resultSlot(tape, 'sum'))]).toEqual([100_001]);
  });
});
