import { basename } from 'node:path';
import type { FileOutcome, SaveOutcome } from '../host.ts';
import { fileName } from './file-name.ts';
import { reasonOf } from './failure-reason.ts';
import { largestBytes, readCase } from './read-case.ts';
import { digestOf, saveAtomically, type SaveMeans } from './save-atomically.ts';

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
  /** Of the text as it was last read or written here; another one on the disk means that another program wrote it. */
  #digest: string | null = null;
  #last: Promise<unknown> = Promise.resolve();

  constructor(ask: AskForPlace, means: SaveMeans, startingPath: string | null) {
    this.#ask = ask;
    this.#means = means;
    this.#path = startingPath;
  }

  get path(): string | null {
    return this.#path;
  }

  async readStarting(): Promise<FileOutcome | null> {
    const path = this.#path;
    if (path === null) return null;
    const outcome = await this.#read(path);
    // What could not be read must not be replaced by the next save.
    if (outcome.kind !== 'read') this.#path = null;
    return outcome;
  }

  async open(): Promise<FileOutcome> {
    const path = await this.#ask.toOpen();
    return path === null ? { kind: 'cancelled' } : this.#read(path);
  }

  save(text: string, suggestedName: string): Promise<SaveOutcome> {
    return this.#inTurn(() => {
      const path = this.#path;
      return path === null ? this.#saveElsewhere(text, suggestedName) : this.#saveAgain(path, text);
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

  // One save after the other: two at once would each take the other for a foreign program.
  #inTurn(save: () => Promise<SaveOutcome>): Promise<SaveOutcome> {
    const turn = this.#last.then(save);
    this.#last = turn.catch(() => undefined);
    return turn;
  }

  async #read(path: string): Promise<FileOutcome> {
    const outcome = await readCase(path, this.#means.files);
    if (outcome.kind === 'failed') return outcome;
    this.#path = path;
    this.#digest = digestOf(outcome.bytes);
    return { kind: 'read', name: basename(path), text: outcome.text };
  }

  async #saveElsewhere(text: string, suggestedName: string): Promise<SaveOutcome> {
    const path = await this.#ask.toSave(fileName(suggestedName, 'tonne'), 'case');
    return path === null ? { kind: 'cancelled' } : this.#writeCase(path, text);
  }

  async #saveAgain(path: string, text: string): Promise<SaveOutcome> {
    const onDisk = await this.#means.files.readFile(path).then(digestOf, () => null);
    if (onDisk === null || onDisk === this.#digest) return this.#writeCase(path, text);
    const what = `“${basename(path)}” was changed by another program after it was opened here, so it was not replaced`;
    return {
      kind: 'failed',
      sentence: `${what}. Your work is still open here. Keep both with Save As under another name.`,
    };
  }

  async #writeCase(path: string, text: string): Promise<SaveOutcome> {
    const bytes = new TextEncoder().encode(text);
    if (bytes.byteLength > largestBytes) {
      const what = `The case was not saved to “${basename(path)}”: it is larger than 20 MB and could not be opened again`;
      return {
        kind: 'failed',
        sentence: `${what}. Your work is still open here. Remove routes or notes and save again.`,
      };
    }
    const outcome = await this.#write(path, bytes, 'case');
    if (outcome.kind === 'saved') {
      this.#path = path;
      this.#digest = digestOf(bytes);
    }
    return outcome;
  }

  async #write(path: string, bytes: Uint8Array, kind: SavedKind): Promise<SaveOutcome> {
    const name = basename(path);
    const result = await saveAtomically(path, bytes, this.#means);
    if (result.kind === 'saved') return { kind: 'saved', name };
    const { because, next } = reasonOf(result.failure);
    const work = result.kept === null ? 'still open here' : `kept beside it as “${result.kept}”`;
    const safe = `What was saved before is untouched, and your work is ${work}`;
    return { kind: 'failed', sentence: `The ${kind} could not be saved to “${name}”: ${because}. ${safe}. ${next}.` };
  }
}
