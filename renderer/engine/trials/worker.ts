import type { TrialAnswered, TrialAsked } from './messages.ts';
import { TrialBench } from './trial-bench.ts';
import { Turns } from './turns.ts';

const turns = new Turns();

const bench = new TrialBench({
  answer: (answered: TrialAnswered, transfer: readonly Transferable[] = []) =>
    postMessage(answered, { transfer: [...transfer] }),
  lookUp: () => turns.lookUp(),
  clock: () => performance.now(),
});

addEventListener('message', (event: MessageEvent<TrialAsked>) => void bench.take(event.data));
