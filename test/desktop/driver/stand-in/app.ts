import { EventEmitter } from 'node:events';

interface ClosableWindow {
  close(): void;
}

/** Electron's `app`, as far as the program uses it. */
export class StandInApp<Window extends ClosableWindow> extends EventEmitter {
  /** The open windows; the one in front is last. */
  readonly windows = new Set<Window>();
  hasQuit = false;
  #isReady = false;
  readonly #systemLocale: string;
  readonly #ready = new Promise<void>((resolve) => this.once('ready', resolve));

  constructor(systemLocale: string) {
    super();
    this.#systemLocale = systemLocale;
  }

  isReady(): boolean {
    return this.#isReady;
  }

  whenReady(): Promise<void> {
    return this.#ready;
  }

  becomeReady(): void {
    this.#isReady = true;
    this.emit('ready');
  }

  /** Nothing happens here: what it would do is what the stand-in cannot prove. Too late a call is still an error. */
  enableSandbox(): void {
    if (this.#isReady) throw new Error('enableSandbox was called after ready.');
  }

  /** This run is always the first. */
  requestSingleInstanceLock(): boolean {
    return true;
  }

  getSystemLocale(): string {
    return this.#systemLocale;
  }

  /** Closes every window; one that stays open keeps the program running. */
  quit(): void {
    for (const window of [...this.windows]) window.close();
    this.#quitWhenEmpty();
  }

  windowClosed(window: Window): void {
    this.windows.delete(window);
    if (this.windows.size === 0 && !this.hasQuit) this.emit('window-all-closed');
  }

  #quitWhenEmpty(): void {
    if (this.windows.size > 0 || this.hasQuit) return;
    this.hasQuit = true;
    this.emit('quit');
  }
}
