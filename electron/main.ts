import { app, dialog, ipcMain, protocol, session } from 'electron';
import { join } from 'node:path';
import { openDataFolder } from './data/data-folder.ts';
import { portableDataFolder } from './data/portable-data-folder.ts';
import { tellOfBreakdown } from './dialogs.ts';
import { registerChannels } from './ipc.ts';
import { caseOfArguments } from './launch-argument.ts';
import { sealProgram, sealSession } from './lockdown.ts';
import { scheme } from './own-address.ts';
import { Program } from './program.ts';
import { answerFrom, schemePrivileges } from './protocol.ts';
import { faultPlace } from './shell/fault-place.ts';

// The bundles of the main process and of the screen lie side by side.
const preload = join(__dirname, 'preload.cjs');
const screenFolder = join(__dirname, '..', 'renderer');

function start(): void {
  const data = openDataFolder(app.getPath('userData'));
  const program = new Program(preload, data);
  const breakDown = (fault: unknown): void => {
    data.log.note('fault in the program', faultPlace(fault));
    tellOfBreakdown(dialog);
  };
  process.on('uncaughtException', breakDown);
  process.on('unhandledRejection', breakDown);

  // A double click on a Mac arrives as an event, perhaps before the program is ready; and a second start may be as early.
  let isLoaded = false;
  let pathBeforeReady: string | null = null;
  const show = (path: string | null): void => {
    if (isLoaded) program.show(path);
    else pathBeforeReady = path ?? pathBeforeReady;
  };
  app.on('open-file', (event, path) => {
    event.preventDefault();
    show(path);
  });
  app.on('second-instance', (_event, words, folder) => show(caseOfArguments(words, folder)));
  app.on('window-all-closed', () => app.quit());
  registerChannels(ipcMain, (contentsId) => program.verbsOf(contentsId));

  void app.whenReady().then(async () => {
    sealSession(session.defaultSession);
    protocol.handle(scheme, (request) => answerFrom(screenFolder, request));
    await program.load();
    isLoaded = true;
    show(pathBeforeReady ?? caseOfArguments(process.argv, process.cwd()));
  });
}

protocol.registerSchemesAsPrivileged(schemePrivileges);
sealProgram(app);
// Before the lock, which lies in that folder too.
const portable = portableDataFolder(process.env);
if (portable !== null) app.setPath('userData', portable);
if (app.requestSingleInstanceLock()) start();
else app.quit();
