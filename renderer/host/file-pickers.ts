import type { FileOutcome, SaveOutcome } from '../../electron/host.ts';
import { explainBrowserFailure } from './browser-failure.ts';
import { caseFileName } from './case-file-name.ts';
import { readBrowserFile } from './read-browser-file.ts';

interface PickerOptions {
  readonly suggestedName?: string;
  readonly types: readonly {
    readonly description: string;
    readonly accept: Readonly<Record<string, readonly string[]>>;
  }[];
}

/** The two functions of the File System Access draft that this program calls; the compiler's own library leaves them out. */
interface PickerWindow {
  showOpenFilePicker(options: PickerOptions): Promise<FileSystemFileHandle[]>;
  showSaveFilePicker(options: PickerOptions): Promise<FileSystemFileHandle>;
}

const types = [{ description: 'Case', accept: { 'application/json': ['.tonne'] } }];

function hasPickers(candidate: object): candidate is PickerWindow {
  return 'showOpenFilePicker' in candidate && 'showSaveFilePicker' in candidate;
}

/** Opens and saves through the browser's file pickers, and remembers which file is open. */
export class FilePickers {
  readonly #window: PickerWindow;
  #file: FileSystemFileHandle | null = null;

  constructor(pickerWindow: PickerWindow) {
    this.#window = pickerWindow;
  }

  static ofThisBrowser(): FilePickers | null {
    return hasPickers(window) ? new FilePickers(window) : null;
  }

  async open(): Promise<FileOutcome> {
    try {
      const [handle] = await this.#window.showOpenFilePicker({ types });
      if (handle === undefined) return { kind: 'cancelled' };
      const outcome = await readBrowserFile(await handle.getFile());
      // A file that could not be read stays out, so that the next save cannot replace it.
      if (outcome.kind === 'read') this.#file = handle;
      return outcome;
    } catch (failure) {
      return explainBrowserFailure(failure, 'The case could not be opened', 'The case on the screen is unchanged');
    }
  }

  async save(text: string, suggestedName: string): Promise<SaveOutcome> {
    return this.#file === null ? this.saveAs(text, suggestedName) : this.#write(this.#file, text);
  }

  async saveAs(text: string, suggestedName: string): Promise<SaveOutcome> {
    try {
      const handle = await this.#window.showSaveFilePicker({ suggestedName: caseFileName(suggestedName), types });
      const outcome = await this.#write(handle, text);
      if (outcome.kind === 'saved') this.#file = handle;
      return outcome;
    } catch (failure) {
      return explainBrowserFailure(failure, 'The case could not be saved', 'Your work is still open here');
    }
  }

  // The browser writes to a copy and puts it in place at close(), so a failure before that leaves the file as it was.
  async #write(handle: FileSystemFileHandle, text: string): Promise<SaveOutcome> {
    try {
      const writable = await handle.createWritable();
      try {
        await writable.write(text);
        await writable.close();
      } catch (failure) {
        await writable.abort().catch(() => undefined);
        throw failure;
      }
      return { kind: 'saved', name: handle.name };
    } catch (failure) {
      const what = `The case could not be saved to “${handle.name}”`;
      return explainBrowserFailure(failure, what, 'The file is as it was before, and your work is still open here');
    }
  }
}
