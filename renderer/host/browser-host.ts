import type { FileOutcome, Host } from '../../electron/host.ts';
import { BrowserDrafts } from './browser-drafts.ts';
import { keepPreferences, readPreferences } from './browser-preferences.ts';
import { DownloadFiles } from './download-files.ts';
import { FilePickers } from './file-pickers.ts';
import { listenForKeystrokes } from './keystrokes.ts';
import { readBrowserFile } from './read-browser-file.ts';

/**
 * The host in a plain browser. Where the browser has file pickers, saving goes on into the file that is open; elsewhere opening
 * reads a copy and every save is a new download.
 */
export function browserHost(): Host {
  const files = FilePickers.ofThisBrowser() ?? new DownloadFiles();
  const drafts = new BrowserDrafts();
  let edited = false;
  window.addEventListener('beforeunload', (event) => {
    if (edited) event.preventDefault();
  });
  return {
    kind: 'browser',
    numberLocale: () => Promise.resolve(navigator.language),
    startingCase: () => Promise.resolve<FileOutcome | null>(null),
    openCase: () => files.open(),
    // A browser has no list of recent files that a page could see.
    openGiven: () => Promise.resolve<FileOutcome>({ kind: 'cancelled' }),
    openDropped: (file) => {
      // What is dropped is a copy: the next save asks for a place.
      files.leave();
      return readBrowserFile(file);
    },
    reloadCase: () => files.reload(),
    saveCase: (text, suggestedName) => files.save(text, suggestedName),
    saveCaseOver: (text, suggestedName) => files.saveOver(text, suggestedName),
    saveCaseAs: (text, suggestedName) => files.saveAs(text, suggestedName),
    saveWorkbook: (bytes, suggestedName) => files.saveWorkbook(bytes, suggestedName),
    setEdited: (isEdited, title) => {
      edited = isEdited;
      document.title = `${title}${isEdited ? ' (edited)' : ''} - Tonne for Tonne`;
      return Promise.resolve();
    },
    keepDraft: (text, title) => Promise.resolve(drafts.keep(text, title)),
    leftDrafts: () => drafts.left(),
    takeDraft: (id) => {
      files.leave();
      const sentence = 'The draft is no longer there. Another tab may have taken it up.';
      return Promise.resolve(drafts.take(id) ? { kind: 'taken', name: null } : { kind: 'failed', sentence });
    },
    forgetDraft: (id) => {
      drafts.forget(id);
      return Promise.resolve();
    },
    preferences: () => Promise.resolve(readPreferences()),
    setPreferences: (preferences) => {
      keepPreferences(preferences);
      return Promise.resolve();
    },
    versions: () => Promise.resolve([{ name: 'Shown by a browser:', version: navigator.userAgent }]),
    onCommand: listenForKeystrokes,
  };
}
