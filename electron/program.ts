import { app, Menu, nativeTheme, screen, shell } from 'electron';
import { type DataFolder, diskMeans } from './data/data-folder.ts';
import { LeftDrafts } from './drafts/left-drafts.ts';
import type { Verbs } from './ipc.ts';
import { menuTemplate } from './menu.ts';
import { usableLocale } from './number-locale.ts';
import { clampBounds } from './shell/clamp-bounds.ts';
import { PreferencesInForce } from './shell/preferences-in-force.ts';
import { RecentList } from './shell/recent-list.ts';
import type { WindowPlace } from './shell/window-place.ts';
import { nextZoom } from './shell/zoom-steps.ts';
import { type CaseWindow, openCaseWindow } from './window.ts';
import type { Shared } from './window-verbs.ts';

/** The running program: its windows, and what they share. */
export class Program {
  readonly #preload: string;
  readonly #data: DataFolder;
  readonly #windows = new Map<number, CaseWindow>();
  readonly #preferences: PreferencesInForce;
  readonly #recent: RecentList;
  readonly #shared: Shared;
  #place: WindowPlace = { bounds: null, isMaximized: false };

  constructor(preload: string, data: DataFolder) {
    this.#preload = preload;
    this.#data = data;
    this.#preferences = new PreferencesInForce(data.preferences, ({ theme, zoom }) => {
      // The frame, the menus and what a page sees as the system's choice. The palette of strong contrast is a dark one.
      nativeTheme.themeSource = theme === 'contrast' ? 'dark' : theme;
      for (const { browserWindow } of this.#windows.values()) browserWindow.webContents.setZoomFactor(zoom / 100);
    });
    this.#recent = new RecentList(data.recent, diskMeans, (recent) => {
      Menu.setApplicationMenu(Menu.buildFromTemplate(menuTemplate(process.platform, this.#deeds, recent)));
    });
    this.#shared = {
      left: new LeftDrafts(data.drafts, diskMeans.files, () => [...this.#windows.values()].map((each) => each.draftId)),
      preferences: this.#preferences,
      log: data.log,
      numberLocale: () => usableLocale(app.getSystemLocale()),
      versions: [
        { name: 'Tonne for Tonne', version: app.getVersion() },
        { name: 'Electron', version: process.versions.electron },
        { name: 'Chromium', version: process.versions.chrome },
        { name: 'Node', version: process.versions.node },
      ],
      noteRecent: (path) => {
        void this.#recent.add(path);
        app.addRecentDocument(path);
      },
    };
  }

  /** Reads what was kept from earlier runs. Nothing in it can keep the program from starting. */
  async load(): Promise<void> {
    await Promise.all([this.#preferences.load(), this.#recent.load(), this.#data.drafts.clear()]);
    this.#place = await this.#data.place.read();
    this.#data.log.note('started', app.getVersion());
  }

  verbsOf(contentsId: number): Verbs | undefined {
    return this.#windows.get(contentsId)?.verbs;
  }

  /** Shows a case: in the window that has it open already, else in a new one, so that no unsaved edit is ever displaced. */
  show(path: string | null): void {
    const open = [...this.#windows.values()].find((window) => path === null || window.file.path === path);
    if (open === undefined) {
      this.#openWindow(path);
      return;
    }
    if (open.browserWindow.isMinimized()) open.browserWindow.restore();
    open.browserWindow.focus();
  }

  #openWindow(path: string | null): void {
    const { bounds, isMaximized } = this.#place;
    const areas = screen.getAllDisplays().map((display) => display.workArea);
    const place = { bounds: bounds === null ? null : clampBounds(bounds, areas), isMaximized };
    const window = openCaseWindow({ preload: this.#preload, path, place, drafts: this.#data.drafts }, this.#shared);
    const { browserWindow } = window;
    const { id } = browserWindow.webContents;
    this.#windows.set(id, window);
    const notePlace = (): void => {
      this.#place = { bounds: browserWindow.getNormalBounds(), isMaximized: browserWindow.isMaximized() };
      void this.#data.place.write(this.#place).catch(() => undefined);
    };
    browserWindow.on('close', notePlace);
    browserWindow.on('resized', notePlace);
    browserWindow.on('moved', notePlace);
    browserWindow.on('focus', () => void this.#recent.look());
    browserWindow.once('closed', () => this.#windows.delete(id));
  }

  readonly #deeds: Parameters<typeof menuTemplate>[1] = {
    send: (command, windowId) => this.#windowOf(windowId)?.send(command),
    openRecent: (path, windowId) => {
      const window = this.#windowOf(windowId);
      // A window in which nothing of the person's is open takes the case in; every other stays as it is.
      if (window?.isFresh === true && !this.#isOpen(path)) window.give(path);
      else this.show(path);
    },
    clearRecent: () => {
      void this.#recent.clear();
      app.clearRecentDocuments();
    },
    zoom: (to) => {
      const { now } = this.#preferences;
      void this.#preferences.set({ ...now, zoom: to === 'whole' ? 100 : nextZoom(now.zoom, to) });
    },
    showDataFolder: () => void shell.openPath(app.getPath('userData')),
  };

  #windowOf(windowId: number | undefined): CaseWindow | undefined {
    return [...this.#windows.values()].find((window) => window.browserWindow.id === windowId);
  }

  #isOpen(path: string): boolean {
    return [...this.#windows.values()].some((window) => window.file.path === path);
  }
}
