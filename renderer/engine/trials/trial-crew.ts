import type { TrialSegment, TrialSummary } from '../../../src/index.ts';
import type { TrialAnswered, TrialAsked, TrialOrder } from './messages.ts';
import { trialShares } from './trial-shares.ts';

/** The part of a Worker that is used, so that tests can stand in for it. */
export interface TrialWorker {
  postMessage(asked: TrialAsked, transfer?: Transferable[]): void;
  terminate(): void;
  addEventListener(type: 'message', listener: (event: MessageEvent<TrialAnswered>) => void): void;
  addEventListener(type: 'error', listener: (event: ErrorEvent) => void): void;
}

type Reply = Extract<TrialAnswered, { kind: 'count' | 'segment' | 'summary' | 'stopped' }>;

interface Waiting {
  readonly worker: TrialWorker;
  readonly resolve: (reply: Reply) => void;
  readonly reject: (fault: Error) => void;
  readonly tell: (done: number) => void;
}

/** Several workers that share the trials of one order out among them. A newer order stops the one before. */
export class TrialCrew {
  readonly #start: () => TrialWorker;
  readonly #size: number;
  #workers: readonly TrialWorker[] = [];
  readonly #waiting = new Map<number, Waiting>();
  #lastTicket = 0;
  #order = 0;

  constructor(start: () => TrialWorker, size: number) {
    this.#start = start;
    this.#size = size;
  }

  /**
   * Draws all trials and sums them up; null where it was stopped before. `tell` hears how many of how many are done. An error tells of a
   * fault of the program; then nobody goes on drawing.
   */
  async run(order: TrialOrder, tell: (done: number, of: number) => void): Promise<TrialSummary | null> {
    this.stop();
    const place = this.#order;
    const isWanted = (): boolean => place === this.#order;
    try {
      return await this.#draw(order, isWanted, tell);
    } catch (fault) {
      if (!isWanted()) return null;
      this.stop();
      throw fault;
    }
  }

  /** Leaves off what is being drawn. */
  stop(): void {
    this.#order += 1;
    for (const [ticket, { worker }] of this.#waiting) worker.postMessage({ kind: 'stop', ticket });
  }

  /** Sends the workers home; the next order calls new ones. */
  dismiss(): void {
    this.stop();
    this.#sendHome();
    for (const [ticket, { resolve }] of this.#waiting) resolve({ kind: 'stopped', ticket });
    this.#waiting.clear();
  }

  async #draw(
    order: TrialOrder,
    isWanted: () => boolean,
    tell: (done: number, of: number) => void,
  ): Promise<TrialSummary | null> {
    const [foreman] = this.#crew();
    if (foreman === undefined) return null;
    const counted = await this.#ask(foreman, (ticket) => ({ kind: 'count', ticket, order }));
    if (counted.kind !== 'count' || !isWanted()) return null;
    const segments = await this.#runShares(order, counted.trials, tell);
    if (segments === null || !isWanted()) return null;
    const summed = await this.#ask(
      foreman,
      (ticket) => ({ kind: 'sum up', ticket, order, segments }),
      segments.flatMap(({ values }) => values.map(({ buffer }) => buffer as ArrayBuffer)),
    );
    return summed.kind === 'summary' && isWanted() ? summed.summary : null;
  }

  async #runShares(
    order: TrialOrder,
    trials: number,
    tell: (done: number, of: number) => void,
  ): Promise<readonly TrialSegment[] | null> {
    const done = this.#workers.map(() => 0);
    const shares = trialShares(trials, this.#workers.length);
    const replies = await Promise.all(
      shares.map(({ first, count }, place) => {
        const worker = this.#workers[place];
        if (worker === undefined) throw new Error('There are more shares than workers.');
        return this.#ask(
          worker,
          (ticket) => ({ kind: 'run', ticket, order, first, count }),
          [],
          (so) => {
            done[place] = so;
            tell(
              done.reduce((sum, each) => sum + each, 0),
              trials,
            );
          },
        );
      }),
    );
    const segments = replies.flatMap((reply) => (reply.kind === 'segment' ? [reply.segment] : []));
    return segments.length === replies.length ? segments : null;
  }

  #ask(
    worker: TrialWorker,
    asked: (ticket: number) => TrialAsked,
    transfer: readonly Transferable[] = [],
    tell: (done: number) => void = () => undefined,
  ): Promise<Reply> {
    this.#lastTicket += 1;
    const ticket = this.#lastTicket;
    return new Promise<Reply>((resolve, reject) => {
      this.#waiting.set(ticket, { worker, resolve, reject, tell });
      worker.postMessage(asked(ticket), [...transfer]);
    });
  }

  #crew(): readonly TrialWorker[] {
    if (this.#workers.length > 0) return this.#workers;
    this.#workers = Array.from({ length: this.#size }, () => {
      const worker = this.#start();
      worker.addEventListener('message', (event) => this.#receive(event.data));
      worker.addEventListener('error', (event) => this.#fail(event.message));
      return worker;
    });
    return this.#workers;
  }

  #receive(answered: TrialAnswered): void {
    const waiting = this.#waiting.get(answered.ticket);
    if (waiting === undefined) return;
    if (answered.kind === 'done so far') {
      waiting.tell(answered.trials);
      return;
    }
    this.#waiting.delete(answered.ticket);
    if (answered.kind === 'fault') waiting.reject(new Error(answered.fault));
    else waiting.resolve(answered);
  }

  // A worker that fell over answers nothing any more, and whoever waits for its share would wait for ever.
  #fail(message: string): void {
    this.#sendHome();
    for (const { reject } of this.#waiting.values()) reject(new Error(message));
    this.#waiting.clear();
  }

  #sendHome(): void {
    for (const worker of this.#workers) worker.terminate();
    this.#workers = [];
  }
}

/** One worker is left to the window and one to the engine; more than four gain little. */
export function startTrialCrew(): TrialCrew {
  const size = Math.max(1, Math.min(4, navigator.hardwareConcurrency - 1));
  return new TrialCrew(() => new Worker(new URL('./worker.ts', import.meta.url), { type: 'module' }), size);
}
