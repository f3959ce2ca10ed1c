import { BrowserWindow, dialog } from 'electron';
import { randomBytes } from 'node:crypto';
import { commandChannel } from './channels.ts';
import { Closing } from './closing.ts';
import { diskMeans } from './data/data-folder.ts';
import { askBeforeClosing, askForPlace, tellOfLostScreen } from './dialogs.ts';
import type { DraftFolder } from './drafts/draft-folder.ts';
import { WindowDraft } from './drafts/window-draft.ts';
import { CaseFile } from './files/case-file.ts';
import type { Command } from './host.ts';
import type { Verbs } from './ipc.ts';
import { homeAddress } from './own-address.ts';
import type { WindowPlace } from './shell/window-place.ts';
import { windowOptions } from './window-options.ts';
import { type Shared, windowVerbs } from './window-verbs.ts';

export interface CaseWindow {
  readonly browserWindow: BrowserWindow;
  readonly file: CaseFile;
  readonly verbs: Verbs;
  /** The name under which its unsaved work is kept. */
  readonly draftId: string;
  /** Nothing of the person's is open here, so that another case may take its place. */
  readonly isFresh: boolean;
  send(command: Command): void;
  /** Asks the screen to go on with this case, once nothing is unsaved. */
  give(path: string): void;
}

/** Where a window comes from and what it starts with. */
interface Start {
  readonly preload: string;
  /** Null lets the screen choose what to show first. */
  readonly path: string | null;
  readonly place: WindowPlace;
  readonly drafts: DraftFolder;
}

/** Opens a window on a case of its own. */
export function openCaseWindow({ preload, path, place, drafts }: Start, shared: Shared): CaseWindow {
  const browserWindow = new BrowserWindow(windowOptions(preload, place.bounds));
  // Asked of the window while it is there: a page that has closed has no contents any more.
  const { webContents, id } = browserWindow;
  const file = new CaseFile(askForPlace(dialog, browserWindow), diskMeans, path);
  const draft = new WindowDraft(drafts, () => randomBytes(8).toString('hex'));
  let shownTitle = 'this case';
  let given: string | null = null;
  const send = (command: Command): void => webContents.send(commandChannel, command);
  const closing = new Closing({
    ask: () => askBeforeClosing(dialog, browserWindow, shownTitle),
    requestSave: () => send('save'),
    destroy: async () => {
      await draft.end();
      if (!browserWindow.isDestroyed()) browserWindow.destroy();
    },
    now: () => performance.now(),
  });

  const verbs = windowVerbs(
    {
      id,
      file,
      draft,
      closing,
      showTitle: (title, edited) => {
        shownTitle = title;
        browserWindow.setTitle(`${title}${edited ? ' (edited)' : ''} - Tonne for Tonne`);
        // The dot in the red button of a Mac and the file behind its title; elsewhere they do nothing.
        browserWindow.setDocumentEdited(edited);
        browserWindow.setRepresentedFilename(file.path ?? '');
      },
      takeGiven: () => {
        const taken = given;
        given = null;
        return taken;
      },
    },
    shared,
  );

  if (place.isMaximized) browserWindow.maximize();
  browserWindow.once('ready-to-show', () => browserWindow.show());
  webContents.on('did-finish-load', () => webContents.setZoomFactor(shared.preferences.now.zoom / 100));
  // The title is what setEdited says, not what stands in the page.
  browserWindow.on('page-title-updated', (event) => event.preventDefault());
  browserWindow.on('close', (event) => closing.onClose(event));
  // Windows about to log off: it waits while a program holds it, and closes without the event above when it does not.
  browserWindow.on('query-session-end', (event) => closing.onClose(event));
  browserWindow.on('focus', () => {
    void file.changedMeanwhile().then((change) => {
      if (change === 'changed' && !browserWindow.isDestroyed()) send('file-changed');
    });
  });
  webContents.on('render-process-gone', (_event, { reason }) => {
    // A page that has died cannot save, so closing has nothing to ask. What it kept is offered to the page that follows.
    closing.setEdited(false);
    draft.leaveBehind();
    shared.left.takeBack(id);
    if (reason === 'clean-exit') return;
    shared.log.note('screen lost', reason);
    void tellOfLostScreen(dialog, browserWindow).then(() => browserWindow.reload());
  });
  browserWindow.loadURL(homeAddress).catch((failure: unknown) => {
    // A window closed while it was loading has nothing left to tell.
    if (!browserWindow.isDestroyed()) throw failure;
  });
  return {
    browserWindow,
    file,
    verbs,
    get draftId() {
      return draft.id;
    },
    get isFresh() {
      return file.path === null && !closing.isEdited;
    },
    send,
    give: (chosen) => {
      given = chosen;
      send('open-given');
    },
  };
}
