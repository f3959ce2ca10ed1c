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
  /** What the program told the system's own list of recent files. */
  readonly recentDocuments: string[] = [];
  readonly #systemLocale: string;
  #dataFolder: string;
  readonly #ready = new Promise<void>((resolve) => this.once('ready', resolve));

  constructor(systemLocale: string, dataFolder: string) {
    super();
    this.#systemLocale = systemLocale;
    this.#dataFolder = dataFolder;
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

  getVersion(): string {
    return '0.0.0-stand-in';
  }

  getPath(name: string): string {
    if (name !== 'userData') throw new Error(`The stand-in knows no folder “${name}”.`);
    return this.#dataFolder;
  }

  setPath(name: string, path: string): void {
    if (name !== 'userData') throw new Error(`The stand-in knows no folder “${name}”.`);
    this.#dataFolder = path;
  }

  addRecentDocument(path: string): void {
    this.recentDocuments.push(path);
  }

  clearRecentDocuments(): void {
    this.recentDocuments.length = 0;
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
