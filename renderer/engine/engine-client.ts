import type { Answered, Answers, Asked, QuestionName, Questions } from './messages.ts';

/** The part of a Worker that is used, so that tests can stand in for it. */
export interface Messenger {
  postMessage(asked: Asked): void;
  addEventListener(type: 'message', listener: (event: MessageEvent<Answered>) => void): void;
  addEventListener(type: 'error', listener: (event: ErrorEvent) => void): void;
}

interface Waiting {
  readonly resolve: (answer: Answers[QuestionName]) => void;
  readonly reject: (fault: Error) => void;
}

/** Asks the engine in its worker. Every question carries a ticket, and its answer comes back on that ticket. */
export class EngineClient {
  readonly #messenger: Messenger;
  readonly #waiting = new Map<number, Waiting>();
  readonly #newest = new Map<QuestionName, number>();
  #lastTicket = 0;

  constructor(messenger: Messenger) {
    this.#messenger = messenger;
    messenger.addEventListener('message', (event) => this.#receive(event.data));
    messenger.addEventListener('error', (event) => this.#stop(event.message));
  }

  ask<Name extends QuestionName>(name: Name, question: Questions[Name]): Promise<Answers[Name]> {
    this.#lastTicket += 1;
    const ticket = this.#lastTicket;
    return new Promise<Answers[Name]>((resolve, reject) => {
      this.#waiting.set(ticket, { resolve: resolve as Waiting['resolve'], reject });
      this.#messenger.postMessage({ ticket, name, question } as Asked);
    });
  }

  /** For questions whose older answers are of no use once a newer one is asked: a late answer is dropped and comes as null. */
  async askNewest<Name extends QuestionName>(name: Name, question: Questions[Name]): Promise<Answers[Name] | null> {
    const place = (this.#newest.get(name) ?? 0) + 1;
    this.#newest.set(name, place);
    const answer = await this.ask(name, question);
    return this.#newest.get(name) === place ? answer : null;
  }

  #receive(answered: Answered): void {
    const waiting = this.#waiting.get(answered.ticket);
    if (waiting === undefined) return;
    this.#waiting.delete(answered.ticket);
    if ('fault' in answered) waiting.reject(new Error(answered.fault));
    else waiting.resolve(answered.answer);
  }

  #stop(message: string): void {
    for (const waiting of this.#waiting.values()) waiting.reject(new Error(message));
    this.#waiting.clear();
  }
}

export function startEngine(): EngineClient {
  return new EngineClient(new Worker(new URL('./worker.ts', import.meta.url), { type: 'module' }));
}
