import type { BrowserWindow, Dialog, FileFilter } from 'electron';
import type { CloseAnswer } from './closing.ts';
import type { AskForPlace, SavedKind } from './files/case-file.ts';

const filters: Readonly<Record<SavedKind, FileFilter[]>> = {
  case: [{ name: 'Case', extensions: ['tonne'] }],
  workbook: [{ name: 'Workbook', extensions: ['xlsx'] }],
};

type Asks = Pick<Dialog, 'showOpenDialog' | 'showSaveDialog' | 'showMessageBox'>;

export function askForPlace(dialog: Asks, window: BrowserWindow): AskForPlace {
  return {
    async toOpen() {
      const { canceled, filePaths } = await dialog.showOpenDialog(window, {
        filters: filters.case,
        properties: ['openFile'],
      });
      return canceled ? null : (filePaths[0] ?? null);
    },
    async toSave(suggestedName, kind) {
      const { canceled, filePath } = await dialog.showSaveDialog(window, {
        filters: filters[kind],
        defaultPath: suggestedName,
      });
      return canceled || filePath === '' ? null : filePath;
    },
  };
}

const closeAnswers: readonly CloseAnswer[] = ['save', 'discard', 'stay'];

export async function askBeforeClosing(dialog: Asks, window: BrowserWindow, title: string): Promise<CloseAnswer> {
  const { response } = await dialog.showMessageBox(window, {
    type: 'warning',
    message: `Save the changes to “${title}” before closing?`,
    detail: 'If you do not save, the changes since the last save are thrown away.',
    buttons: ['Save', 'Don’t save', 'Cancel'],
    defaultId: 0,
    cancelId: 2,
    noLink: true,
  });
  return closeAnswers[response] ?? 'stay';
}

/** For what the program did not foresee: no trace of the program's insides, but what is safe and what to do. */
export function tellOfBreakdown(dialog: Pick<Dialog, 'showErrorBox'>): void {
  dialog.showErrorBox(
    'Something went wrong inside the program',
    'The files on your disk are untouched, and your edits are kept as a draft. Save your work under a new name with Save As, then close the program and start it again.',
  );
}

/** For a page that died: the window is drawn again from what is on the disk. */
export async function tellOfLostScreen(dialog: Asks, window: BrowserWindow): Promise<void> {
  await dialog.showMessageBox(window, {
    type: 'error',
    message: 'This window stopped working and must be drawn again',
    detail:
      'The saved file is untouched and will be opened again. Edits up to the last second were kept; you will be asked about them.',
    buttons: ['Continue'],
  });
}
