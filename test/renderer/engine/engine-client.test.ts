import { beforeEach, describe, expect, it } from 'vitest';
import { EngineClient, type Messenger } from '../../../renderer/engine/engine-client.ts';
import type { Answered, Asked } from '../../../renderer/engine/messages.ts';

/** A worker that answers when the test lets it. */
class SlowWorker {
  readonly asked: Asked[] = [];
  #onMessage: (event: MessageEvent<Answered>) => void = () => undefined;
  #onError: (event: ErrorEvent) => void = () => undefined;

  readonly messenger: Messenger = {
    postMessage: (asked) => this.asked.push(asked),
    addEventListener: (type: string, listener: never) => {
      if (type === 'message') this.#onMessage = listener;
      else this.#onError = listener;
    },
  };

  answer(answered: Answered): void {
    this.#onMessage({ data: answered } as MessageEvent<Answered>);
  }

  crash(message: string): void {
    this.#onError({ message } as ErrorEvent);
  }
}

let worker: SlowWorker;
let client: EngineClient;
const ticketOf = (place: number) => worker.asked[place]?.ticket ?? -1;

beforeEach(() => {
  worker = new SlowWorker();
  client = new EngineClient(worker.messenger);
});

describe('questions to the engine', () => {
  it('each get the answer to their own ticket, in whatever order answers come', async () => {
    const first = client.ask('explain', { ids: ['a'] });
    const second = client.ask('explain', { ids: ['b', 'c'] });

    worker.answer({ ticket: ticketOf(1), answer: [null, null] });
    worker.answer({ ticket: ticketOf(0), answer: [null] });

    expect(await first).toEqual([null]);
    expect(await second).toEqual([null, null]);
  });

  it('drop an answer that comes after a newer question of the same kind', async () => {
    const late = client.askNewest('explain', { ids: ['a'] });
    const newest = client.askNewest('explain', { ids: ['b', 'c'] });

    worker.answer({ ticket: ticketOf(1), answer: [null, null] });
    worker.answer({ ticket: ticketOf(0), answer: [null] });

    expect(await newest).toEqual([null, null]);
    expect(await late).toBeNull();
  });

  it('pass over an answer that nobody waits for', async () => {
    const asked = client.ask('explain', { ids: ['a'] });
    worker.answer({ ticket: 999, answer: [] });
    worker.answer({ ticket: ticketOf(0), answer: [null] });

    expect(await asked).toEqual([null]);
  });

  it('fail with what went wrong when the engine throws', async () => {
    const asked = client.ask('open', { text: '' });
    worker.answer({ ticket: ticketOf(0), fault: 'lost a tonne' });

    await expect(asked).rejects.toThrow('lost a tonne');
  });

  it('all fail when the worker dies', async () => {
    const asked = [client.ask('open', { text: '' }), client.ask('explain', { ids: [] })];
    worker.crash('out of memory');

    const outcomes = await Promise.allSettled(asked);
    expect(outcomes.map(({ status }) => status)).toEqual(['rejected', 'rejected']);
  });
});
