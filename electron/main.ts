import { app, dialog, ipcMain, Menu, protocol, session } from 'electron';
import { join } from 'node:path';
import { tellOfBreakdown } from './dialogs.ts';
import { registerChannels } from './ipc.ts';
import { caseOfArguments } from './launch-argument.ts';
import { sealProgram, sealSession } from './lockdown.ts';
import { menuTemplate } from './menu.ts';
import { usableLocale } from './number-locale.ts';
import { answerFrom, schemePrivileges } from './protocol.ts';
import { scheme } from './own-address.ts';
import { type CaseWindow, openCaseWindow } from './window.ts';

// The bundles of the main process and of the screen lie side by side.
const preload = join(__dirname, 'preload.cjs');
const screenFolder = join(__dirname, '..', 'renderer');

const windows = new Map<number, CaseWindow>();

/** Shows a case: in the window that has it open already, else in a new one, so that no unsaved edit is ever displaced. */
function show(path: string | null): void {
  const open = [...windows.values()].find((window) => path === null || window.file.path === path);
  if (open !== undefined) {
    if (open.browserWindow.isMinimized()) open.browserWindow.restore();
    open.browserWindow.focus();
    return;
  }
  const window = openCaseWindow(preload, path, () => usableLocale(app.getSystemLocale()));
  const { id } = window.browserWindow.webContents;
  windows.set(id, window);
  window.browserWindow.once('closed', () => windows.delete(id));
}

function start(): void {
  // A double click on a Mac arrives as an event, perhaps before the program is ready.
  let pathBeforeReady: string | null = null;
  app.on('open-file', (event, path) => {
    event.preventDefault();
    if (app.isReady()) show(path);
    else pathBeforeReady = path;
  });
  app.on('second-instance', (_event, words, folder) => show(caseOfArguments(words, folder)));
  app.on('window-all-closed', () => app.quit());
  registerChannels(ipcMain, (contentsId) => windows.get(contentsId)?.verbs);

  void app.whenReady().then(() => {
    sealSession(session.defaultSession);
    protocol.handle(scheme, (request) => answerFrom(screenFolder, request));
    const template = menuTemplate(process.platform, (command, windowId) => {
      [...windows.values()].find((window) => window.browserWindow.id === windowId)?.send(command);
    });
    Menu.setApplicationMenu(Menu.buildFromTemplate(template));
    show(pathBeforeReady ?? caseOfArguments(process.argv, process.cwd()));
  });
}

process.on('uncaughtException', () => tellOfBreakdown(dialog));
process.on('unhandledRejection', () => tellOfBreakdown(dialog));
protocol.registerSchemesAsPrivileged(schemePrivileges);
sealProgram(app);
if (app.requestSingleInstanceLock()) start();
else app.quit();
