import type { Host } from '../../electron/host.ts';
import { browserHost } from './browser-host.ts';
import { desktopHost } from './desktop-host.ts';

/** The machine this page runs on: the desktop program where it offers itself, else the browser. */
export function chooseHost(): Host {
  return desktopHost() ?? browserHost();
}
