import type { FileOutcome, SaveOutcome } from '../../electron/host.ts';
import { explainBrowserFailure } from './browser-failure.ts';
import type { BrowserFiles } from './browser-files.ts';
import { fileName } from './file-name.ts';
import { readBrowserFile } from './read-browser-file.ts';
import { writeBrowserFile } from './write-browser-file.ts';

interface PickerType {
  readonly description: string;
  readonly accept: Readonly<Record<string, readonly string[]>>;
}

/** The two functions of the File System Access draft that this program calls; the compiler's own library leaves them out. */
export interface PickerWindow {
  showOpenFilePicker(options: { readonly types: readonly PickerType[] }): Promise<FileSystemFileHandle[]>;
  showSaveFilePicker(options: {
    readonly suggestedName: string;
    readonly types: readonly PickerType[];
  }): Promise<FileSystemFileHandle>;
}

const caseType: PickerType = { description: 'Case', accept: { 'application/json': ['.tonne'] } };
const workbookType: PickerType = {
  description: 'Workbook',
  accept: { 'application/vnd.openxmlformats-officedocument.spreadsheetml.sheet': ['.xlsx'] },
};

function hasPickers(candidate: object): candidate is PickerWindow {
  return 'showOpenFilePicker' in candidate && 'showSaveFilePicker' in candidate;
}

/** Null where the browser does not say, for example because the file is gone. */
function modifiedAt(handle: FileSystemFileHandle): Promise<number | null> {
  return handle.getFile().then(
    (file) => file.lastModified,
    () => null,
  );
}

/** Opens and saves through the browser's file pickers, and remembers which file is open. */
export class FilePickers implements BrowserFiles {
  readonly #window: PickerWindow;
  #file: FileSystemFileHandle | null = null;
  /** When the open file was last changed, as far as this page knows: milliseconds since 1970. */
  #modified = 0;

  constructor(pickerWindow: PickerWindow) {
    this.#window = pickerWindow;
  }

  static ofThisBrowser(): FilePickers | null {
    return hasPickers(window) ? new FilePickers(window) : null;
  }

  async open(): Promise<FileOutcome> {
    try {
      const [handle] = await this.#window.showOpenFilePicker({ types: [caseType] });
      if (handle === undefined) return { kind: 'cancelled' };
      return await this.#read(handle);
    } catch (failure) {
      return explainBrowserFailure(failure, 'The case could not be opened', 'The case on the screen is unchanged');
    }
  }

  async save(text: string, suggestedName: string): Promise<SaveOutcome> {
    const file = this.#file;
    if (file === null) return this.saveAs(text, suggestedName);
    const modified = await modifiedAt(file);
    if (modified !== null && modified !== this.#modified) return { kind: 'changed', name: file.name };
    return this.saveOver(text, suggestedName);
  }

  async saveOver(text: string, suggestedName: string): Promise<SaveOutcome> {
    const file = this.#file;
    if (file === null) return this.saveAs(text, suggestedName);
    const outcome = await writeBrowserFile(file, text);
    if (outcome.kind === 'saved') await this.#goOn(file);
    return outcome;
  }

  async reload(): Promise<FileOutcome> {
    try {
      return this.#file === null ? { kind: 'cancelled' } : await this.#read(this.#file);
    } catch (failure) {
      return explainBrowserFailure(failure, 'The file could not be read again', 'The case on the screen is unchanged');
    }
  }

  leave(): void {
    this.#file = null;
  }

  saveAs(text: string, suggestedName: string): Promise<SaveOutcome> {
    return this.#saveElsewhere(fileName(suggestedName, 'tonne'), caseType, text, (handle) => this.#goOn(handle));
  }

  saveWorkbook(bytes: Uint8Array, suggestedName: string): Promise<SaveOutcome> {
    // The workbook is a copy for others; the case stays the file that is open.
    const goOn = (): Promise<void> => Promise.resolve();
    return this.#saveElsewhere(fileName(suggestedName, 'xlsx'), workbookType, new Uint8Array(bytes), goOn);
  }

  async #read(handle: FileSystemFileHandle): Promise<FileOutcome> {
    const file = await handle.getFile();
    const outcome = await readBrowserFile(file);
    // A file that could not be read stays out, so that the next save cannot replace it.
    if (outcome.kind === 'read') {
      this.#file = handle;
      this.#modified = file.lastModified;
    }
    return outcome;
  }

  async #goOn(handle: FileSystemFileHandle): Promise<void> {
    this.#file = handle;
    this.#modified = (await modifiedAt(handle)) ?? 0;
  }

  async #saveElsewhere(
    name: string,
    type: PickerType,
    content: FileSystemWriteChunkType,
    onSaved: (handle: FileSystemFileHandle) => Promise<void>,
  ): Promise<SaveOutcome> {
    let handle: FileSystemFileHandle;
    try {
      handle = await this.#window.showSaveFilePicker({ suggestedName: name, types: [type] });
    } catch (failure) {
      return explainBrowserFailure(failure, `“${name}” could not be saved`, 'Your work is still open here');
    }
    const outcome = await writeBrowserFile(handle, content);
    if (outcome.kind === 'saved') await onSaved(handle);
    return outcome;
  }
}
