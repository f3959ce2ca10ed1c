import { EventEmitter } from 'node:events';
import type { Page } from 'playwright-core';
import { toProgram } from './address.ts';
import { deliverKey } from './bridge.ts';

type OpenHandler = (details: { readonly url: string }) => { readonly action: 'allow' | 'deny' };
type Deliver = (channel: string, payload: unknown[]) => void;

let lastId = 0;

/** Electron's `webContents` of one window: the page, its events, and messages to it. */
export class StandInWebContents extends EventEmitter {
  readonly id = ++lastId;
  /** Settles when everything sent so far has reached the page. */
  delivered: Promise<void> = Promise.resolve();
  readonly #page: Promise<Page>;
  /** 1 is the size as designed. The page itself is not scaled. */
  zoomFactor = 1;
  #openHandler: OpenHandler = () => ({ action: 'allow' });

  constructor(page: Promise<Page>) {
    super();
    this.#page = page;
  }

  setWindowOpenHandler(handler: OpenHandler): void {
    this.#openHandler = handler;
  }

  mayOpen(url: string): boolean {
    return this.#openHandler({ url: toProgram(url) }).action === 'allow';
  }

  setZoomFactor(factor: number): void {
    this.zoomFactor = factor;
  }

  /** Peer connections need a network; the stand-in has none to watch. */
  setWebRTCIPHandlingPolicy(_policy: string): void {
    // Kept nowhere: a unit test reads what the program sets.
  }

  send(channel: string, ...payload: unknown[]): void {
    this.delivered = this.delivered.then(() => this.#deliver(channel, payload));
  }

  async #deliver(channel: string, payload: unknown[]): Promise<void> {
    const page = await this.#page;
    await page.evaluate(
      ({ key, channel, payload }) => {
        const deliver = (window as unknown as Record<symbol, Deliver | undefined>)[Symbol.for(key)];
        if (deliver === undefined) throw new Error('The page has no preload to deliver to.');
        deliver(channel, payload);
      },
      { key: deliverKey, channel, payload },
    );
  }
}
