import { BrowserWindow, dialog } from 'electron';
import { randomBytes } from 'node:crypto';
import { setTimeout as wait } from 'node:timers/promises';
import { commandChannel } from './channels.ts';
import { Closing } from './closing.ts';
import { askBeforeClosing, askForPlace, tellOfLostScreen } from './dialogs.ts';
import { CaseFile } from './files/case-file.ts';
import { diskFileSystem } from './files/file-system.ts';
import type { SaveMeans } from './files/save-atomically.ts';
import type { Command } from './host.ts';
import type { Verbs } from './ipc.ts';
import { homeAddress } from './own-address.ts';
import { windowOptions } from './window-options.ts';

export interface CaseWindow {
  readonly browserWindow: BrowserWindow;
  readonly file: CaseFile;
  readonly verbs: Verbs;
  send(command: Command): void;
}

const means: SaveMeans = {
  files: diskFileSystem,
  wait: (milliseconds) => wait(milliseconds),
  randomLetters: () => randomBytes(4).toString('hex'),
};

/** Opens a window on a case of its own; null lets the screen choose what to show first. */
export function openCaseWindow(preload: string, startingPath: string | null, numberLocale: () => string): CaseWindow {
  const browserWindow = new BrowserWindow(windowOptions(preload));
  const file = new CaseFile(askForPlace(dialog, browserWindow), means, startingPath);
  let shownTitle = 'this case';
  const send = (command: Command): void => browserWindow.webContents.send(commandChannel, command);
  const closing = new Closing({
    ask: () => askBeforeClosing(dialog, browserWindow, shownTitle),
    requestSave: () => send('save'),
    destroy: () => browserWindow.destroy(),
    now: () => performance.now(),
  });

  const verbs: Verbs = {
    numberLocale: () => Promise.resolve(numberLocale()),
    startingCase: () => file.readStarting(),
    openCase: () => file.open(),
    saveCase: (text, name) => closing.afterSave(() => file.save(text, name)),
    saveCaseAs: (text, name) => closing.afterSave(() => file.saveAs(text, name)),
    saveWorkbook: (bytes, name) => file.saveWorkbook(bytes, name),
    setEdited: (edited, title) => {
      shownTitle = title;
      closing.setEdited(edited);
      browserWindow.setTitle(`${title}${edited ? ' (edited)' : ''} - Tonne for Tonne`);
      // The dot in the red button of a Mac; elsewhere it does nothing.
      browserWindow.setDocumentEdited(edited);
      return Promise.resolve();
    },
  };

  browserWindow.once('ready-to-show', () => browserWindow.show());
  // The title is what setEdited says, not what stands in the page.
  browserWindow.on('page-title-updated', (event) => event.preventDefault());
  browserWindow.on('close', (event) => closing.onClose(event));
  // Windows about to log off: it waits while a program holds it, and closes without the event above when it does not.
  browserWindow.on('query-session-end', (event) => closing.onClose(event));
  browserWindow.webContents.on('render-process-gone', (_event, { reason }) => {
    // A page that has died cannot save, so closing has nothing to ask.
    closing.setEdited(false);
    if (reason === 'clean-exit') return;
    void tellOfLostScreen(dialog, browserWindow).then(() => browserWindow.reload());
  });
  browserWindow.loadURL(homeAddress).catch((failure: unknown) => {
    // A window closed while it was loading has nothing left to tell.
    if (!browserWindow.isDestroyed()) throw failure;
  });
  return { browserWindow, file, verbs, send };
}
