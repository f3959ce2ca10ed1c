import type { FileSystem } from '../files/file-system.ts';
import type { LeftDraft } from '../host.ts';
import type { Draft } from './draft.ts';
import type { DraftFolder } from './draft-folder.ts';
import { leftDraft } from './left-draft.ts';

/**
 * The drafts that no window works on: left by an earlier run, or by a screen that died. Each is offered to one window, and stays in
 * its folder until the person takes it up or throws it away.
 */
export class LeftDrafts {
  readonly #folder: DraftFolder;
  readonly #files: FileSystem;
  /** The names under which the windows of this run keep their work. */
  readonly #inUse: () => readonly string[];
  /** To which window a draft was offered. */
  readonly #offered = new Map<string, number>();

  constructor(folder: DraftFolder, files: FileSystem, inUse: () => readonly string[]) {
    this.#folder = folder;
    this.#files = files;
    this.#inUse = inUse;
  }

  async offerTo(window: number): Promise<readonly LeftDraft[]> {
    const inUse = new Set(this.#inUse());
    const free = (await this.#folder.readAll()).filter(
      ({ id }) => !inUse.has(id) && (this.#offered.get(id) ?? window) === window,
    );
    for (const { id } of free) this.#offered.set(id, window);
    const left = await Promise.all(free.map((draft) => this.#compare(draft)));
    return left.filter((draft) => draft !== null);
  }

  /** A draft that was offered to this window, or null. */
  async find(id: string, window: number): Promise<Draft | null> {
    if (this.#offered.get(id) !== window) return null;
    return (await this.#folder.readAll()).find((draft) => draft.id === id) ?? null;
  }

  async forget(id: string, window: number): Promise<void> {
    if (this.#offered.get(id) === window) await this.#folder.remove(id);
  }

  /** The screen of a window is gone before the person decided: the next one is asked. */
  takeBack(window: number): void {
    for (const [id, to] of this.#offered) if (to === window) this.#offered.delete(id);
  }

  // A file that already holds the same was saved just before the end: then nothing is left to decide.
  async #compare(draft: Draft): Promise<LeftDraft | null> {
    const left = await leftDraft(draft, this.#files);
    if (left === null) await this.#folder.remove(draft.id).catch(() => undefined);
    return left;
  }
}
