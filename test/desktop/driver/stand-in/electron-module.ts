import type { BrowserWindowConstructorOptions } from 'electron';
import type { StandInDialogs } from './dialogs.ts';
import type { StandInDesktop } from './desktop.ts';
import { complete } from './complete.ts';
import type { StandInMenus } from './menus.ts';
import type { StandInProtocols } from './protocols.ts';
import { StandInWindow, type World } from './window.ts';

export interface Parts extends World {
  readonly desktop: StandInDesktop;
  readonly dialogs: StandInDialogs;
  readonly menus: StandInMenus;
  readonly protocols: StandInProtocols;
}

/** What main gets when it imports `electron`. */
export function electronModule({ desktop, dialogs, menus, protocols, ...world }: Parts): object {
  const defaultSession = complete('session.defaultSession', world.session);
  const BrowserWindow = new Proxy(StandInWindow, {
    construct: (_target, [options]: [BrowserWindowConstructorOptions]) => {
      for (const leak of world.session.leaks()) world.ledger.addFault(`A window opened in an open session: ${leak}.`);
      return complete('BrowserWindow', new StandInWindow(world, options));
    },
  });
  return complete('electron', {
    app: complete('app', world.app),
    BrowserWindow,
    dialog: complete('dialog', dialogs.dialog),
    ipcMain: complete('ipcMain', world.ipc.ipcMain),
    Menu: complete('Menu', menus.Menu),
    nativeTheme: complete('nativeTheme', desktop.nativeTheme),
    screen: complete('screen', desktop.screen),
    shell: complete('shell', desktop.shell),
    protocol: complete('protocol', protocols.protocol),
    session: complete('session', {
      get defaultSession() {
        if (!world.app.isReady()) throw new Error('The session was used before ready.');
        return defaultSession;
      },
    }),
  });
}
