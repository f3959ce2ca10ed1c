import type { BrowserWindowConstructorOptions } from 'electron';
import type { Bounds } from './shell/window-place.ts';

/** The smallest window in which the two routes still stand side by side. */
const smallest = { minWidth: 800, minHeight: 560 };

const firstSize = { width: 1280, height: 860 };

/**
 * How every window is made: where it last stood, or null for the middle of the display. What keeps the page apart from the machine
 * is written out, though most of it is Electron's default.
 */
export function windowOptions(preload: string, bounds: Bounds | null): BrowserWindowConstructorOptions {
  return {
    ...smallest,
    ...(bounds ?? firstSize),
    // Shown once it is drawn, so that no empty frame flashes up.
    show: false,
    title: 'Tonne for Tonne',
    webPreferences: {
      preload,
      contextIsolation: true,
      sandbox: true,
      nodeIntegration: false,
      // Its dictionaries would be downloaded.
      spellcheck: false,
    },
  };
}
