import type { Browser, Page } from 'playwright-core';

/** What the person does with a dialog of the system. A path of null closes it without a choice. */
export type DialogAnswer =
  | { readonly kind: 'open'; readonly path: string | null }
  | { readonly kind: 'save'; readonly path: string | null }
  | { readonly kind: 'message'; readonly button: string };

/** What a dialog showed. */
export interface SeenDialog {
  readonly kind: DialogAnswer['kind'];
  readonly message: string;
  readonly suggestedName: string;
  readonly buttons: readonly string[];
}

/** A request, navigation, window or download away from the program, and what stopped it. "driver" means that nothing in the program did. */
export interface ForeignRequest {
  readonly url: string;
  readonly stoppedBy: 'navigation guard' | 'window guard' | 'download guard' | 'request filter' | 'driver';
}

/**
 * Drives the built program from end to end: its real main process, preload and screen.
 *
 * The one implementation so far, `launchStandIn`, replaces the module `electron` by a stand-in whose windows are pages of an
 * installed Chromium, so that it runs where Electron's own runtime cannot be fetched. It cannot prove: that the page and the
 * preload live in separate worlds, the sandbox of the system, fuses at run time, native dialogs and accelerators, the
 * single-instance lock, file association, or that `window.open` returns null. A second implementation over Playwright's
 * `_electron.launch`, for a machine that has the runtime, can stand behind this same interface; there is none yet.
 */
export interface Driver {
  /** The page of the window that was opened first. Its time limit is 3 s. */
  readonly page: Page;
  /** The pages of all windows that are open, oldest first. */
  pages(): readonly Page[];
  /** The title of the frame around a page, as the system shows it. */
  title(page?: Page): string;
  /** Queues the answer to one dialog. A dialog without a fitting answer, and an answer without a dialog, fail at close(). */
  nextDialog(answer: DialogAnswer): void;
  dialogsSeen(): readonly SeenDialog[];
  /** Uses the menu item in the window that was opened or brought to the front last. */
  clickMenu(id: string): Promise<void>;
  /** Closes a window as the person does with its button; the program may ask or refuse. */
  closeWindow(page?: Page): void;
  /** Brings a window to the front, as a click on it does. */
  lookAtWindow(page?: Page): void;
  /** What the system shows of the program outside its pages. */
  shown(page?: Page): Shown;
  /** An item of the menu as it stands there now; null where there is none. */
  menuItem(id: string): { readonly label: string; readonly enabled: boolean } | null;
  /** Drops a file of the disk on a window. Fails where the page leaves the drop to the browser. */
  drop(path: string, page?: Page): Promise<void>;
  /** A double click on a case, as a Mac announces it. */
  openFromDesktop(path: string): void;
  /** Logs the person off, as Windows announces it, and says whether the program asks to wait. */
  logOff(page?: Page): boolean;
  /** Announces that the process behind a page has died. */
  loseScreen(page?: Page): void;
  /** Starts the program again with these words on its command line, as a double click on a file does. */
  startAgain(words: readonly string[], workingFolder: string): void;
  /** Every address that the pages asked for, in terms of the program's scheme. */
  requests(): readonly string[];
  /** The attempts to leave so far; taking them keeps them from failing close(). */
  takeForeignRequests(): readonly ForeignRequest[];
  /** The violations of the page's policy so far, as "directive: what was blocked"; taking them keeps them from failing close(). */
  takePolicyViolations(): readonly string[];
  hasQuit(): boolean;
  /** Ends the program as a power cut does: it is told nothing and asked nothing. */
  crash(): Promise<void>;
  /** Ends the program without asking, and throws when anything happened that no test expected. */
  close(): Promise<void>;
}

export interface Shown {
  /** 1 is the size as designed. */
  readonly zoom: number;
  /** The colours that the frame and the menus were told to have: "system", "light" or "dark". */
  readonly theme: string;
  readonly bounds: Area;
  /** Folders that were opened for the person. */
  readonly folders: readonly string[];
  /** What stands in the system's own list of recent files, oldest first. */
  readonly recentDocuments: readonly string[];
}

interface Area {
  readonly x: number;
  readonly y: number;
  readonly width: number;
  readonly height: number;
}

export interface LaunchOptions {
  /** A browser that several runs share, which saves half a second each; without one, the run starts and ends its own. */
  readonly browser?: Browser;
  /** The folder of the built program: electron/main.cjs, electron/preload.cjs and renderer/index.html. */
  readonly distFolder: string;
  /** Words on the command line, for example the path of a case. */
  readonly words?: readonly string[];
  /** The program's data folder, for runs that follow one another; without it, each run has an empty one of its own. */
  readonly dataFolder?: string;
  /** What the displays have left beside the bars of the system. */
  readonly displays?: readonly Area[];
  /** The region that the system reports, as Electron gives it. */
  readonly systemLocale?: string;
}
