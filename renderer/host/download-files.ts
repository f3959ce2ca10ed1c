import type { FileOutcome, SaveOutcome } from '../../electron/host.ts';
import type { BrowserFiles } from './browser-files.ts';
import { download } from './download.ts';
import { fileName } from './file-name.ts';
import { pickByInput } from './pick-by-input.ts';
import { readBrowserFile } from './read-browser-file.ts';

/** For a browser that lets a page read a chosen file and offer downloads, and nothing more. */
export class DownloadFiles implements BrowserFiles {
  async open(): Promise<FileOutcome> {
    const file = await pickByInput();
    return file === null ? { kind: 'cancelled' } : readBrowserFile(file);
  }

  save(text: string, suggestedName: string): Promise<SaveOutcome> {
    return Promise.resolve(download(text, fileName(suggestedName, 'tonne')));
  }

  saveOver(text: string, suggestedName: string): Promise<SaveOutcome> {
    return this.save(text, suggestedName);
  }

  reload(): Promise<FileOutcome> {
    return Promise.resolve({ kind: 'cancelled' });
  }

  leave(): void {
    // No file is ever open here: every save is a new download.
  }

  saveAs(text: string, suggestedName: string): Promise<SaveOutcome> {
    return this.save(text, suggestedName);
  }

  saveWorkbook(bytes: Uint8Array, suggestedName: string): Promise<SaveOutcome> {
    return Promise.resolve(download(new Uint8Array(bytes), fileName(suggestedName, 'xlsx')));
  }
}
