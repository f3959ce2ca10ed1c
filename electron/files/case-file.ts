import { basename } from 'node:path';
import type { FileOutcome, SaveOutcome } from '../host.ts';
import { digestOf } from './digest.ts';
import { fileName } from './file-name.ts';
import { type NotedFile, foreignChange, hasMoved, noteFile } from './noted-file.ts';
import { largestBytes, readCase } from './read-case.ts';
import { saveAtomically } from './save-atomically.ts';
import type { SaveMeans } from './save-means.ts';
import { notSaved, tooLargeToSave } from './save-sentences.ts';

export type SavedKind = 'case' | 'workbook';

/** Asks the person for a place. Null when they close the window without one. */
export interface AskForPlace {
  toOpen(): Promise<string | null>;
  toSave(suggestedName: string, kind: SavedKind): Promise<string | null>;
}

/** The file that one window works on: opens, saves, and remembers which it is, so that no path ever goes to the screen. */
export class CaseFile {
  readonly #ask: AskForPlace;
  readonly #means: SaveMeans;
  #path: string | null;
  /** As it was last read or written here; another content on the disk means that another program wrote it. */
  #noted: NotedFile | null = null;
  #isReadOnly = false;
  #last: Promise<unknown> = Promise.resolve();

  constructor(ask: AskForPlace, means: SaveMeans, startingPath: string | null) {
    this.#ask = ask;
    this.#means = means;
    this.#path = startingPath;
  }

  get path(): string | null {
    return this.#path;
  }

  get name(): string | null {
    return this.#path === null ? null : basename(this.#path);
  }

  /** The file that the work in this window began from, so that a draft can be told from a later file. */
  get base(): { readonly path: string; readonly digest: string } | null {
    return this.#path === null || this.#noted === null ? null : { path: this.#path, digest: this.#noted.digest };
  }

  async readStarting(): Promise<FileOutcome | null> {
    const path = this.#path;
    if (path === null) return null;
    const outcome = await this.read(path);
    // What could not be read must not be replaced by the next save.
    if (outcome.kind !== 'read') this.#path = null;
    return outcome;
  }

  async open(): Promise<FileOutcome> {
    const path = await this.#ask.toOpen();
    return path === null ? { kind: 'cancelled' } : this.read(path);
  }

  /** Reads the file of this window again, as another program left it. */
  async reload(): Promise<FileOutcome> {
    return this.#path === null ? { kind: 'cancelled' } : this.read(this.#path);
  }

  async read(path: string): Promise<FileOutcome> {
    const { files } = this.#means;
    const outcome = await readCase(path, files);
    if (outcome.kind === 'failed') return outcome;
    const canWrite = await this.#canWrite(path);
    this.#placed(path, await noteFile(path, digestOf(outcome.bytes), files), !canWrite);
    const read = { kind: 'read', name: basename(path), text: outcome.text } as const;
    return canWrite ? read : { ...read, isReadOnly: true };
  }

  /** Goes on with the file that a draft was made from, if it is still what it was. */
  async adopt(path: string, digest: string): Promise<boolean> {
    const { files } = this.#means;
    const isSame = (await files.readFile(path).then(digestOf, () => '')) === digest;
    if (isSame) this.#placed(path, await noteFile(path, digest, files), !(await this.#canWrite(path)));
    return isSame;
  }

  /** From now on no file is open here: the next save asks for a place. */
  leave(): void {
    this.#path = null;
    this.#noted = null;
  }

  save(text: string, suggestedName: string): Promise<SaveOutcome> {
    return this.#inTurn(async () => {
      const path = this.#path;
      // A file that can only be read stays as it is: the work goes to another place.
      if (path === null || this.#isReadOnly) return this.#saveElsewhere(text, suggestedName);
      const before = this.#noted?.digest ?? '';
      if ((await foreignChange(path, before, this.#means.files)) === 'changed') {
        return { kind: 'changed', name: basename(path) };
      }
      return this.#writeCase(path, text);
    });
  }

  /** Replaces what another program wrote, after the person has said so; that goes to .bak. */
  saveOver(text: string, suggestedName: string): Promise<SaveOutcome> {
    return this.#inTurn(() => {
      const path = this.#path;
      return path === null ? this.#saveElsewhere(text, suggestedName) : this.#writeCase(path, text);
    });
  }

  saveAs(text: string, suggestedName: string): Promise<SaveOutcome> {
    return this.#inTurn(() => this.#saveElsewhere(text, suggestedName));
  }

  /** Writes a workbook elsewhere; the case of this window stays the file that is open. */
  saveWorkbook(bytes: Uint8Array, suggestedName: string): Promise<SaveOutcome> {
    return this.#inTurn(async () => {
      const path = await this.#ask.toSave(fileName(suggestedName, 'xlsx'), 'workbook');
      return path === null ? { kind: 'cancelled' } : this.#write(path, bytes, 'workbook');
    });
  }

  /** What other programs did to the file since it was last read or written here; null for nothing. */
  async changedMeanwhile(): Promise<'changed' | 'gone' | null> {
    const path = this.#path;
    const noted = this.#noted;
    if (path === null || noted === null || !(await hasMoved(path, noted, this.#means.files))) return null;
    return foreignChange(path, noted.digest, this.#means.files);
  }

  #canWrite(path: string): Promise<boolean> {
    return this.#means.files.checkWritable(path).then(
      () => true,
      () => false,
    );
  }

  #placed(path: string, noted: NotedFile, isReadOnly: boolean): void {
    this.#path = path;
    this.#noted = noted;
    this.#isReadOnly = isReadOnly;
  }

  // One save after the other: two at once would each take the other for a foreign program.
  #inTurn(save: () => Promise<SaveOutcome>): Promise<SaveOutcome> {
    const turn = this.#last.then(save);
    this.#last = turn.catch(() => undefined);
    return turn;
  }

  async #saveElsewhere(text: string, suggestedName: string): Promise<SaveOutcome> {
    const path = await this.#ask.toSave(fileName(suggestedName, 'tonne'), 'case');
    return path === null ? { kind: 'cancelled' } : this.#writeCase(path, text);
  }

  async #writeCase(path: string, text: string): Promise<SaveOutcome> {
    const bytes = new TextEncoder().encode(text);
    if (bytes.byteLength > largestBytes) return tooLargeToSave(basename(path));
    const outcome = await this.#write(path, bytes, 'case');
    if (outcome.kind === 'saved') {
      this.#placed(path, await noteFile(path, digestOf(bytes), this.#means.files), false);
    }
    return outcome;
  }

  async #write(path: string, bytes: Uint8Array, kind: SavedKind): Promise<SaveOutcome> {
    const name = basename(path);
    const result = await saveAtomically(path, bytes, this.#means);
    return result.kind === 'saved' ? { kind: 'saved', name } : notSaved(name, kind, result.failure, result.kept);
  }
}
