interface Area {
  readonly x: number;
  readonly y: number;
  readonly width: number;
  readonly height: number;
}

/** What the desktop around the program tells it and does for it: Electron's `nativeTheme`, `screen` and `shell`. */
export class StandInDesktop {
  /** Folders that the program showed to the person. */
  readonly shownFolders: string[] = [];
  readonly #displays: readonly Area[];

  constructor(displays: readonly Area[]) {
    this.#displays = displays;
  }

  readonly nativeTheme = { themeSource: 'system' };

  readonly screen = {
    getAllDisplays: () => this.#displays.map((workArea) => ({ workArea })),
  };

  readonly shell = {
    openPath: (path: string) => {
      this.shownFolders.push(path);
      return Promise.resolve('');
    },
  };
}
