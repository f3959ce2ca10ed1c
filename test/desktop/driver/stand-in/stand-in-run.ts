import { basename, join, resolve } from 'node:path';
import type { BrowserContext, Page } from 'playwright-core';
import type { DialogAnswer, Driver, ForeignRequest, LaunchOptions, SeenDialog, Shown } from '../driver.ts';
import { answerRequest } from './answer-requests.ts';
import { StandInApp } from './app.ts';
import { StandInDesktop } from './desktop.ts';
import { StandInDialogs } from './dialogs.ts';
import { electronModule, type Parts } from './electron-module.ts';
import { StandInIpc } from './ipc.ts';
import { Ledger } from './ledger.ts';
import { loadMain } from './load-main.ts';
import { StandInMenus } from './menus.ts';
import { isPrevented } from './preventable.ts';
import { StandInProtocols } from './protocols.ts';
import { StandInSession } from './session.ts';
import type { StandInWindow } from './window.ts';

const ordinaryDisplay = { x: 0, y: 0, width: 1920, height: 1040 };

/** One run of the program on the stand-in. */
export class StandInRun implements Driver {
  readonly #parts: Parts;
  readonly #end: () => Promise<void>;

  constructor(
    context: BrowserContext,
    {
      systemLocale = 'en-GB',
      dataFolder,
      displays = [ordinaryDisplay],
    }: LaunchOptions & { readonly dataFolder: string },
    end: () => Promise<void>,
  ) {
    const app = new StandInApp<StandInWindow>(systemLocale, dataFolder);
    const ledger = new Ledger();
    this.#end = end;
    this.#parts = {
      context,
      app,
      ledger,
      opened: [],
      ipc: new StandInIpc(),
      session: new StandInSession(),
      desktop: new StandInDesktop(displays),
      dialogs: new StandInDialogs(ledger),
      menus: new StandInMenus(),
      protocols: new StandInProtocols(() => app.isReady()),
    };
  }

  async start(distFolder: string): Promise<void> {
    const { context, app, opened } = this.#parts;
    await context.route(
      () => true,
      (route) => answerRequest(route, this.#parts),
    );
    loadMain(join(resolve(distFolder), 'electron', 'main.cjs'), electronModule(this.#parts));
    app.becomeReady();
    // What main does on ready is queued behind a few reads of its data folder.
    const late = Date.now() + 3000;
    while (opened[0] === undefined && Date.now() < late) await new Promise(setImmediate);
    if (opened[0] === undefined) throw new Error('The program opened no window.');
    await opened[0].loaded;
  }

  get page(): Page {
    const page = this.#parts.opened[0]?.page ?? null;
    if (page === null) throw new Error('The program has opened no window yet.');
    return page;
  }

  pages(): readonly Page[] {
    return this.#parts.opened.flatMap((window) => (window.isDestroyed() ? [] : (window.page ?? [])));
  }

  title(page = this.page): string {
    return this.#windowOf(page).getTitle();
  }

  nextDialog(answer: DialogAnswer): void {
    this.#parts.dialogs.queue(answer);
  }

  dialogsSeen(): readonly SeenDialog[] {
    return this.#parts.dialogs.seen;
  }

  async clickMenu(id: string): Promise<void> {
    const { app, menus } = this.#parts;
    const window = [...app.windows].at(-1);
    menus.click(id, window, () => app.quit());
    await window?.webContents.delivered;
  }

  closeWindow(page = this.page): void {
    this.#windowOf(page).close();
  }

  lookAtWindow(page = this.page): void {
    this.#windowOf(page).focus();
  }

  shown(page = this.page): Shown {
    const { desktop, app } = this.#parts;
    const window = this.#windowOf(page);
    return {
      zoom: window.webContents.zoomFactor,
      theme: desktop.nativeTheme.themeSource,
      bounds: window.bounds,
      folders: desktop.shownFolders,
      recentDocuments: app.recentDocuments,
    };
  }

  menuItem(id: string): { readonly label: string; readonly enabled: boolean } | null {
    return this.#parts.menus.look(id);
  }

  async drop(path: string, page = this.page): Promise<void> {
    await page.evaluate(
      ({ path, name }) => {
        const file = Object.defineProperty(new File(['not read'], name), 'standInPath', { value: path });
        const dataTransfer = new DataTransfer();
        dataTransfer.items.add(file);
        // The browser hands out copies of the files that were added.
        const files: unknown = Object.assign([file], { item: () => file });
        Object.defineProperty(dataTransfer, 'files', { value: files });
        for (const type of ['dragover', 'drop']) {
          const event = new DragEvent(type, { dataTransfer, bubbles: true, cancelable: true });
          document.body.dispatchEvent(event);
          if (!event.defaultPrevented)
            throw new Error(`The page left a ${type} to the browser, which would open the file.`);
        }
      },
      { path, name: basename(path) },
    );
  }

  openFromDesktop(path: string): void {
    this.#parts.app.emit('open-file', { preventDefault: () => undefined }, path);
  }

  logOff(page = this.page): boolean {
    return isPrevented(this.#windowOf(page), 'query-session-end', { reasons: ['logoff'] });
  }

  loseScreen(page = this.page): void {
    this.#windowOf(page).webContents.emit('render-process-gone', {}, { reason: 'crashed', exitCode: 1 });
  }

  startAgain(words: readonly string[], workingFolder: string): void {
    this.#parts.app.emit('second-instance', {}, ['tonne-for-tonne', ...words], workingFolder);
  }

  requests(): readonly string[] {
    return this.#parts.ledger.requests;
  }

  takeForeignRequests(): readonly ForeignRequest[] {
    return this.#parts.ledger.takeForeignRequests();
  }

  takePolicyViolations(): readonly string[] {
    return this.#parts.ledger.takePolicyViolations();
  }

  hasQuit(): boolean {
    return this.#parts.app.hasQuit;
  }

  async crash(): Promise<void> {
    await this.#end();
  }

  async close(): Promise<void> {
    // What a page has already done is reported a moment later; a round trip lets it arrive.
    const settle = () => new Promise((resolve) => setTimeout(resolve, 0));
    await Promise.all(this.pages().map((page) => page.evaluate(settle).catch(() => undefined)));
    await this.#end();
    this.#parts.dialogs.settle();
    this.#parts.ledger.settle();
  }

  #windowOf(page: Page): StandInWindow {
    const window = this.#parts.opened.find((candidate) => candidate.page === page);
    if (window === undefined) throw new Error('This page belongs to no window of the program.');
    return window;
  }
}
