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

/** Opens and saves through the browser's file pickers, and remembers which file is open. */
export class FilePickers implements BrowserFiles {
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
      const [handle] = await this.#window.showOpenFilePicker({ types: [caseType] });
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
    return this.#file === null ? this.saveAs(text, suggestedName) : writeBrowserFile(this.#file, text);
  }

  saveAs(text: string, suggestedName: string): Promise<SaveOutcome> {
    return this.#saveElsewhere(fileName(suggestedName, 'tonne'), caseType, text, (handle) => (this.#file = handle));
  }

  saveWorkbook(bytes: Uint8Array, suggestedName: string): Promise<SaveOutcome> {
    // The workbook is a copy for others; the case stays the file that is open.
    const goOn = (): void => undefined;
    return this.#saveElsewhere(fileName(suggestedName, 'xlsx'), workbookType, new Uint8Array(bytes), goOn);
  }

  async #saveElsewhere(
    name: string,
    type: PickerType,
    content: FileSystemWriteChunkType,
    onSaved: (handle: FileSystemFileHandle) => void,
  ): Promise<SaveOutcome> {
    let handle: FileSystemFileHandle;
    try {
      handle = await this.#window.showSaveFilePicker({ suggestedName: name, types: [type] });
    } catch (failure) {
      return explainBrowserFailure(failure, `“${name}” could not be saved`, 'Your work is still open here');
    }
    const outcome = await writeBrowserFile(handle, content);
    if (outcome.kind === 'saved') onSaved(handle);
    return outcome;
  }
}
