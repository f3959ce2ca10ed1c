import type { FileOutcome, Host } from '../../electron/host.ts';
import { DownloadFiles } from './download-files.ts';
import { FilePickers } from './file-pickers.ts';
import { listenForKeystrokes } from './keystrokes.ts';

/**
 * The host in a plain browser. Where the browser has file pickers, saving goes on into the file that is open; elsewhere opening
 * reads a copy and every save is a new download.
 */
export function browserHost(): Host {
  const files = FilePickers.ofThisBrowser() ?? new DownloadFiles();
  let edited = false;
  window.addEventListener('beforeunload', (event) => {
    if (edited) event.preventDefault();
  });
  return {
    kind: 'browser',
    numberLocale: () => Promise.resolve(navigator.language),
    startingCase: () => Promise.resolve<FileOutcome | null>(null),
    openCase: () => files.open(),
    saveCase: (text, suggestedName) => files.save(text, suggestedName),
    saveCaseAs: (text, suggestedName) => files.saveAs(text, suggestedName),
    saveWorkbook: (bytes, suggestedName) => files.saveWorkbook(bytes, suggestedName),
    setEdited: (isEdited, title) => {
      edited = isEdited;
      document.title = `${title}${isEdited ? ' (edited)' : ''} - Tonne for Tonne`;
      return Promise.resolve();
    },
    onCommand: listenForKeystrokes,
  };
}
