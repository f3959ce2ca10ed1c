import type { Host } from '../../electron/host.ts';

declare global {
  interface Window {
    /** Put there by the preload of the desktop program before the page's own code runs; absent in a browser. */
    readonly tonneHost?: Host;
  }
}

export function desktopHost(): Host | null {
  return window.tonneHost ?? null;
}
