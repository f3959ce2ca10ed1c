import { EventEmitter } from 'node:events';

type RequestFilter = (details: { readonly url: string }, answer: (verdict: { cancel?: boolean }) => void) => void;

/** Electron's default session: remembers what the program set, and asks its request filter. */
export class StandInSession extends EventEmitter {
  readonly #settings = new Map<string, unknown>();
  #filter: RequestFilter | null = null;

  readonly webRequest = {
    onBeforeRequest: (filter: RequestFilter) => (this.#filter = filter),
  };

  setPermissionRequestHandler(handler: unknown): void {
    this.#settings.set('permission request', handler);
  }

  setPermissionCheckHandler(handler: unknown): void {
    this.#settings.set('permission check', handler);
  }

  setDevicePermissionHandler(handler: unknown): void {
    this.#settings.set('device', handler);
  }

  setSpellCheckerEnabled(enabled: boolean): void {
    this.#settings.set('spelling', enabled);
  }

  /** What a session still grants when a window opens; empty when it is sealed. */
  leaks(): readonly string[] {
    const needed = ['permission request', 'permission check', 'device'];
    return [
      ...needed.filter((name) => typeof this.#settings.get(name) !== 'function').map((name) => `no ${name} handler`),
      ...(this.#settings.get('spelling') === false ? [] : ['the spelling checker is on']),
      ...(this.#filter === null ? ['no request filter'] : []),
      ...(this.listenerCount('will-download') === 0 ? ['downloads are allowed'] : []),
    ];
  }

  isCancelled(url: string): Promise<boolean> {
    const filter = this.#filter;
    if (filter === null) return Promise.resolve(false);
    return new Promise((resolve) => filter({ url }, ({ cancel = false }) => resolve(cancel)));
  }
}
