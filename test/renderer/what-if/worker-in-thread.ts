import { TrialBench } from '../../../renderer/engine/trials/trial-bench.ts';
import type { TrialAnswered, TrialAsked } from '../../../renderer/engine/trials/messages.ts';
import type { TrialWorker } from '../../../renderer/engine/trials/trial-crew.ts';

const turn = (): Promise<void> =>
  new Promise((resolve) => {
    setImmediate(resolve);
  });

/** A trial worker without a thread of its own: a real bench behind messages that are copied, and that come when those before them are done. */
export class WorkerInThread implements TrialWorker {
  readonly asked: TrialAsked[] = [];
  readonly answered: TrialAnswered[] = [];
  isHome = false;
  readonly #bench: TrialBench;
  #onMessage: (event: MessageEvent<TrialAnswered>) => void = () => undefined;
  #onError: (event: ErrorEvent) => void = () => undefined;
  #now = 0;

  constructor() {
    this.#bench = new TrialBench({
      answer: (answered, transfer = []) => {
        // As between threads: buffers that are handed over are gone on this side.
        const data = structuredClone(answered, { transfer: [...transfer] });
        void turn().then(() => this.#hear(data));
      },
      lookUp: turn,
      // Every look at the clock takes longer than a stretch may last, so that each block is followed by a look at what else is asked.
      clock: () => (this.#now += 25),
    });
  }

  postMessage(asked: TrialAsked, transfer: Transferable[] = []): void {
    this.asked.push(asked);
    const data = structuredClone(asked, { transfer });
    void turn().then(() => (this.isHome ? undefined : this.#bench.take(data)));
  }

  terminate(): void {
    this.isHome = true;
  }

  addEventListener(type: 'message', listener: (event: MessageEvent<TrialAnswered>) => void): void;
  addEventListener(type: 'error', listener: (event: ErrorEvent) => void): void;
  addEventListener(type: 'message' | 'error', listener: (event: never) => void): void {
    const heard = listener as (event: MessageEvent<TrialAnswered> | ErrorEvent) => void;
    if (type === 'message') this.#onMessage = heard;
    else this.#onError = heard;
  }

  /** What happens when a worker cannot be loaded or falls over. */
  fallOver(message: string): void {
    this.#onError({ message } as ErrorEvent);
  }

  #hear(data: TrialAnswered): void {
    if (this.isHome) return;
    this.answered.push(data);
    this.#onMessage({ data } as MessageEvent<TrialAnswered>);
  }
}
