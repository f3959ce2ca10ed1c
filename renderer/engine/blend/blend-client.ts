import type { BlendAnswered, BlendAsked, Blends } from './blend-messages.ts';

/** The part of a Worker that is used, so that tests can stand in for it. */
export interface BlendWorker {
  postMessage(asked: BlendAsked): void;
  terminate(): void;
  addEventListener(type: 'message', listener: (event: MessageEvent<BlendAnswered>) => void): void;
  addEventListener(type: 'error', listener: (event: ErrorEvent) => void): void;
}

/** Asks for the cheapest blend. The solver is large, so that its worker is only started when the first is asked for. */
export class BlendClient {
  readonly #start: () => BlendWorker;
  #worker: BlendWorker | null = null;
  #ticket = 0;
  #waiting: {
    readonly resolve: (found: Blends | null) => void;
    readonly reject: (fault: Error) => void;
  } | null = null;

  constructor(start: () => BlendWorker) {
    this.#start = start;
  }

  /** Null where there is nothing to blend for; undefined when a newer blend has been asked for. */
  find(text: string, today: string): Promise<Blends | null | undefined> {
    this.#worker ??= this.#begun();
    this.#ticket += 1;
    const ticket = this.#ticket;
    const answer = new Promise<Blends | null>((resolve, reject) => (this.#waiting = { resolve, reject }));
    this.#worker.postMessage({ ticket, text, today });
    return answer.then((found) => (ticket === this.#ticket ? found : undefined));
  }

  dismiss(): void {
    this.#worker?.terminate();
    this.#worker = null;
  }

  #begun(): BlendWorker {
    const worker = this.#start();
    worker.addEventListener('message', ({ data }) => {
      if (data.ticket !== this.#ticket) return;
      if ('fault' in data) this.#waiting?.reject(new Error(data.fault));
      else this.#waiting?.resolve(data.found);
    });
    worker.addEventListener('error', ({ message }) => this.#waiting?.reject(new Error(message)));
    return worker;
  }
}

export function startBlendClient(): BlendClient {
  return new BlendClient(() => new Worker(new URL('./solver-worker.ts', import.meta.url), { type: 'module' }));
}
