import { reasonOf } from '../files/failure-reason.ts';
import type { KeepOutcome } from '../host.ts';
import type { Draft } from './draft.ts';
import type { DraftFolder } from './draft-folder.ts';

/** The unsaved work of one window. Writes go one after the other, and of those that wait only the newest is written. */
export class WindowDraft {
  readonly #folder: DraftFolder;
  readonly #newId: () => string;
  #id: string;
  #waiting: { readonly id: string; readonly draft: Draft | null } | null = null;
  #writing: Promise<KeepOutcome> | null = null;
  #isOver = false;
  #asked = 0;

  constructor(folder: DraftFolder, newId: () => string) {
    this.#folder = folder;
    this.#newId = newId;
    this.#id = newId();
  }

  get id(): string {
    return this.#id;
  }

  /** Counts what was kept so far, so that a save can tell whether newer edits came while it ran. */
  get asked(): number {
    return this.#asked;
  }

  /** Settles once this draft, or a newer one, is on the disk. Null: nothing is unsaved any more. */
  keep(draft: Omit<Draft, 'id'> | null): Promise<KeepOutcome> {
    if (this.#isOver) return Promise.resolve({ kind: 'kept' });
    this.#asked += 1;
    const id = this.#id;
    this.#waiting = { id, draft: draft === null ? null : { id, ...draft } };
    this.#writing ??= this.#writeAll().finally(() => (this.#writing = null));
    return this.#writing;
  }

  /** A save wrote all that was kept up to `asked`: nothing of it is unsaved any more. */
  async saved(asked: number): Promise<void> {
    if (asked === this.#asked) await this.keep(null);
  }

  /** The window goes, and the person knows what becomes of its work: nothing that is still on its way is kept. */
  async end(): Promise<void> {
    await this.keep(null);
    this.#isOver = true;
  }

  /** Goes on under the name of a draft that an earlier run left, which so is never without a copy. */
  adopt(id: string): void {
    this.#id = id;
  }

  /** The screen died: what it kept stays for the person to take up, and this window goes on under a new name. */
  leaveBehind(): void {
    this.#id = this.#newId();
  }

  async #writeAll(): Promise<KeepOutcome> {
    let outcome: KeepOutcome = { kind: 'kept' };
    for (let next = this.#waiting; next !== null; next = this.#waiting) {
      this.#waiting = null;
      outcome = await this.#write(next.id, next.draft);
    }
    return outcome;
  }

  async #write(id: string, draft: Draft | null): Promise<KeepOutcome> {
    try {
      await (draft === null ? this.#folder.remove(id) : this.#folder.write(draft));
      return { kind: 'kept' };
    } catch (failure) {
      const { because } = reasonOf(failure);
      const what = `Unsaved edits cannot be kept for the case of a power cut: ${because}`;
      return { kind: 'failed', sentence: `${what}. They are still open here. Save them to be safe.` };
    }
  }
}
