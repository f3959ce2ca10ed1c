type Handler = (event: object, ...payload: unknown[]) => unknown;

/** Electron's `ipcMain`: the handler of each channel. */
export class StandInIpc {
  readonly #handlers = new Map<string, Handler>();

  /** The object that main imports. */
  readonly ipcMain = {
    handle: (channel: string, handler: Handler) => {
      if (this.#handlers.has(channel)) throw new Error(`The channel ${channel} has two handlers.`);
      this.#handlers.set(channel, handler);
    },
  };

  invoke(event: object, channel: string, payload: readonly unknown[]): Promise<unknown> {
    const handler = this.#handlers.get(channel);
    if (handler === undefined) return Promise.reject(new Error(`The channel ${channel} has no handler.`));
    return Promise.resolve(handler(event, ...payload));
  }
}
