import type { Step } from './step-list.ts';
import { loopOf, loops, steps } from './tape.ts';

/** Steps put into stretches that one loop works; `ends` tells after how many steps each stretch ends. */
export interface Stretches {
  /** Numbers of steps in their new order. */
  readonly order: readonly number[];
  readonly ends: readonly number[];
}

/**
 * Puts steps into few long stretches of one loop each, keeping every step behind what it reads. A change of loop costs as much as a dozen
 * steps. At each change the loop is taken that has the step which most changes must still follow, and of several such the one with most
 * steps ready; the longest chain of changes is a bound that no order can go below, and this comes within half as much again of it.
 */
export function stretches(list: readonly Step[]): Stretches {
  const loop = list.map(({ name }) => loopOf(steps[name]));
  const readers = list.map((): number[] => []);
  const waiting = new Int32Array(list.length);
  list.forEach(({ of }, step) => {
    for (const operand of of) {
      if (operand.kind !== 'step') continue;
      readers[operand.index]!.push(step);
      waiting[step]! += 1;
    }
  });
  const changes = changesAfter(loop, readers);
  const ready = Array.from({ length: loops }, (): number[] => []);
  list.forEach((_, step) => {
    if (waiting[step] === 0) ready[loop[step]!]!.push(step);
  });
  const order: number[] = [];
  const ends: number[] = [];
  while (order.length < list.length) {
    const now = ready[mostUrgent(ready, changes)]!;
    // What becomes ready for the same loop meanwhile is pushed to the end of `now`, and is worked in this stretch too.
    for (const step of now) {
      order.push(step);
      for (const reader of readers[step]!) if (--waiting[reader]! === 0) ready[loop[reader]!]!.push(reader);
    }
    now.length = 0;
    ends.push(order.length);
  }
  return { order, ends };
}

/** How many changes of loop must follow each step at least. Steps stand behind what they read, so one pass backwards suffices. */
function changesAfter(loop: readonly number[], readers: readonly (readonly number[])[]): Int32Array {
  const changes = new Int32Array(loop.length);
  for (let step = loop.length - 1; step >= 0; step -= 1) {
    for (const reader of readers[step]!) {
      const after = changes[reader]! + (loop[reader] === loop[step] ? 0 : 1);
      if (after > changes[step]!) changes[step] = after;
    }
  }
  return changes;
}

function mostUrgent(ready: readonly (readonly number[])[], changes: Int32Array): number {
  let best = 0;
  let bestUrgency = -1;
  ready.forEach((waiting, loop) => {
    const urgency = waiting.reduce((most, step) => Math.max(most, changes[step]!), -1);
    if (urgency > bestUrgency || (urgency === bestUrgency && waiting.length > ready[best]!.length)) {
      best = loop;
      bestUrgency = urgency;
    }
  });
  return best;
}
