import { join } from 'node:path';
import { DraftFolder } from '../../electron/drafts/draft-folder.ts';
import { LeftDrafts } from '../../electron/drafts/left-drafts.ts';
import { WindowDraft } from '../../electron/drafts/window-draft.ts';
import { diskFileSystem, type FileSystem } from '../../electron/files/file-system.ts';
import { temporaryFolder } from './temporary-folder.ts';

/** A data folder with drafts in it, and windows that keep theirs there. */
export async function draftDesk(files: FileSystem = diskFileSystem) {
  const root = await temporaryFolder();
  const path = join(root, 'data', 'drafts');
  let letters = 0;
  const means = { files, wait: () => Promise.resolve(), randomLetters: () => String((letters += 1)) };
  const folder = new DraftFolder(path, means);
  let made = 0;
  const newId = () => String((made += 1)).padStart(16, '0');
  const windows: WindowDraft[] = [];
  const openWindow = () => {
    const draft = new WindowDraft(folder, newId);
    windows.push(draft);
    return draft;
  };
  const left = new LeftDrafts(folder, files, () => windows.map((window) => window.id));
  /** The program ends without a word, and another run begins. */
  const crash = () => windows.splice(0);
  return { root, path, folder, openWindow, left, crash };
}

/** Unsaved work that has no file yet. */
export const work = (text: string, at = 1000) => ({ at, title: 'Mill', base: null, text });
