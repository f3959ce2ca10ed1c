import { EventEmitter } from 'node:events';
import { readFileSync } from 'node:fs';
import type { BrowserWindowConstructorOptions } from 'electron';
import type { BrowserContext, Frame, Page } from 'playwright-core';
import { browserOrigin, toBrowser, toProgram } from './address.ts';
import type { StandInApp } from './app.ts';
import { bridgeScript } from './bridge.ts';
import { complete } from './complete.ts';
import type { StandInIpc } from './ipc.ts';
import type { Ledger } from './ledger.ts';
import { isPrevented } from './preventable.ts';
import type { StandInSession } from './session.ts';
import { watchPage } from './watch-page.ts';
import { StandInWebContents } from './web-contents.ts';

/** What all windows of one run share. */
export interface World {
  readonly context: BrowserContext;
  readonly app: StandInApp<StandInWindow>;
  readonly ipc: StandInIpc;
  readonly session: StandInSession;
  readonly ledger: Ledger;
  /** Every window ever opened, in order. */
  readonly opened: StandInWindow[];
}

let lastId = 0;

/** Electron's `BrowserWindow`: a page of Chromium. */
export class StandInWindow extends EventEmitter {
  readonly id = ++lastId;
  readonly webContents: StandInWebContents;
  /** Settles when the page shows what it was told to load, or cannot. */
  readonly loaded: Promise<void>;
  page: Page | null = null;
  readonly #world: World;
  readonly #pageReady: Promise<Page>;
  #settleLoaded: (outcome: Promise<void>) => void = () => undefined;
  #title: string;
  #isDestroyed = false;
  #programLoads = 0;
  #isMaximized = false;
  /** Where the window was told to stand. */
  readonly bounds: { readonly x: number; readonly y: number; readonly width: number; readonly height: number };

  constructor(world: World, options: BrowserWindowConstructorOptions) {
    super();
    this.#world = world;
    this.#title = options.title ?? '';
    const { x = 0, y = 0, width = 0, height = 0 } = options;
    this.bounds = { x, y, width, height };
    this.loaded = new Promise((resolve) => (this.#settleLoaded = resolve));
    this.#pageReady = this.#openPage(options.webPreferences?.preload);
    this.webContents = complete('webContents', new StandInWebContents(this.#pageReady));
    world.opened.push(this);
    world.app.windows.add(this);
    world.app.emit('web-contents-created', {}, this.webContents);
  }

  async #openPage(preload: string | undefined): Promise<Page> {
    const { context, session, ledger } = this.#world;
    const page = await context.newPage();
    await page.exposeBinding('standInInvoke', ({ frame }, channel: string, payload: unknown[]) =>
      this.#invoke(frame, channel, payload),
    );
    await page.exposeBinding('standInReport', (_source, violation: string) => ledger.addPolicyViolation(violation));
    if (preload !== undefined) {
      await page.addInitScript({ content: bridgeScript(browserOrigin, readFileSync(preload, 'utf8')) });
    }
    this.page = page;
    watchPage(page, this.webContents, session, ledger);
    return page;
  }

  #invoke(frame: Frame, channel: string, payload: unknown[]): Promise<unknown> {
    const senderFrame = { url: toProgram(frame.url()), parent: frame.parentFrame() };
    return this.#world.ipc.invoke({ sender: this.webContents, senderFrame }, channel, payload);
  }

  /** Whether a navigation is one that the program itself began, which it is not asked about. */
  takeProgramLoad(): boolean {
    if (this.#programLoads === 0) return false;
    this.#programLoads -= 1;
    return true;
  }

  async loadURL(address: string): Promise<void> {
    const page = await this.#pageReady;
    this.#programLoads += 1;
    const load = page.goto(toBrowser(address)).then(() => undefined);
    this.#settleLoaded(load);
    await load;
    this.webContents.emit('did-finish-load');
    this.emit('ready-to-show');
  }

  reload(): void {
    this.#programLoads += 1;
    void this.#pageReady.then((page) => page.reload()).then(() => this.webContents.emit('did-finish-load'));
  }

  getTitle(): string {
    return this.#title;
  }

  setTitle(title: string): void {
    this.#title = title;
  }

  /** The mark in the frame of a Mac's window; the title carries the same. */
  setDocumentEdited(_edited: boolean): void {
    // Only a Mac shows it.
  }

  /** The icon of the file in the title of a Mac's window. */
  setRepresentedFilename(_path: string): void {
    // Only a Mac shows it.
  }

  maximize(): void {
    this.#isMaximized = true;
  }

  isMaximized(): boolean {
    return this.#isMaximized;
  }

  getNormalBounds(): { readonly x: number; readonly y: number; readonly width: number; readonly height: number } {
    return this.bounds;
  }

  show(): void {
    this.focus();
  }

  focus(): void {
    // Last in the set is in front.
    this.#world.app.windows.delete(this);
    this.#world.app.windows.add(this);
    this.emit('focus');
  }

  isMinimized(): boolean {
    return false;
  }

  isDestroyed(): boolean {
    return this.#isDestroyed;
  }

  close(): void {
    if (!this.#isDestroyed && !isPrevented(this, 'close')) this.destroy();
  }

  destroy(): void {
    if (this.#isDestroyed) return;
    this.#isDestroyed = true;
    void this.#pageReady.then((page) => page.close());
    this.emit('closed');
    this.#world.app.windowClosed(this);
  }
}
