import type { FileOutcome, Host, SaveOutcome } from '../../electron/host.ts';
import { downloadCase } from './download-case.ts';
import { listenForKeystrokes } from './keystrokes.ts';
import { pickByInput } from './pick-by-input.ts';
import { FilePickers } from './file-pickers.ts';
import { readBrowserFile } from './read-browser-file.ts';

/**
 * The host in a plain browser. Where the browser has file pickers, saving goes on into the file that is open; elsewhere opening
 * reads a copy and every save is a new download.
 */
export function browserHost(): Host {
  const pickers = FilePickers.ofThisBrowser();
  let edited = false;

  window.addEventListener('beforeunload', (event) => {
    if (edited) event.preventDefault();
  });

  async function openByInput(): Promise<FileOutcome> {
    const file = await pickByInput();
    return file === null ? { kind: 'cancelled' } : readBrowserFile(file);
  }

  function save(text: string, suggestedName: string): Promise<SaveOutcome> {
    return pickers === null ? Promise.resolve(downloadCase(text, suggestedName)) : pickers.save(text, suggestedName);
  }

  function saveAs(text: string, suggestedName: string): Promise<SaveOutcome> {
    return pickers === null ? Promise.resolve(downloadCase(text, suggestedName)) : pickers.saveAs(text, suggestedName);
  }

  return {
    kind: 'browser',
    numberLocale: () => Promise.resolve(navigator.language),
    startingCase: () => Promise.resolve(null),
    openCase: () => (pickers === null ? openByInput() : pickers.open()),
    saveCase: save,
    saveCaseAs: saveAs,
    setEdited: (isEdited, title) => {
      edited = isEdited;
      document.title = `${title}${isEdited ? ' (edited)' : ''} - Tonne for Tonne`;
      return Promise.resolve();
    },
    onCommand: listenForKeystrokes,
  };
}
