import { join } from 'node:path';
import { hasCode } from '../files/has-code.ts';
import { replaceFile } from '../files/replace-file.ts';
import type { SaveMeans } from '../files/save-means.ts';
import { type Draft, draftBytes, draftOf } from './draft.ts';

/** The folder of unsaved work: one file a draft, each whole at every moment. */
export class DraftFolder {
  readonly #folder: string;
  readonly #means: SaveMeans;

  constructor(folder: string, means: SaveMeans) {
    this.#folder = folder;
    this.#means = means;
  }

  write(draft: Draft): Promise<void> {
    return replaceFile(this.#pathOf(draft.id), draftBytes(draft), this.#means);
  }

  async remove(id: string): Promise<void> {
    await this.#means.files.unlink(this.#pathOf(id)).catch((failure: unknown) => {
      if (!hasCode(failure, 'ENOENT')) throw failure;
    });
  }

  /** Takes away what a write left that was cut off. Before any window of this run keeps a draft. */
  async clear(): Promise<void> {
    const names = await this.#means.files.readFolder(this.#folder).catch(() => []);
    const parts = names.filter((name) => /\.draft\.part-\w+$/u.test(name));
    await Promise.all(parts.map((name) => this.#means.files.unlink(join(this.#folder, name)).catch(() => undefined)));
  }

  /** Newest first. What cannot be read as a draft is passed over and left where it is. */
  async readAll(): Promise<readonly Draft[]> {
    const names = await this.#means.files.readFolder(this.#folder).catch(() => []);
    const drafts = await Promise.all(names.filter((name) => name.endsWith('.draft')).map((name) => this.#read(name)));
    return drafts.filter((draft) => draft !== null).sort((one, other) => other.at - one.at);
  }

  async #read(name: string): Promise<Draft | null> {
    const bytes = await this.#means.files.readFile(join(this.#folder, name)).catch(() => null);
    const draft = bytes === null ? null : draftOf(bytes);
    return draft !== null && name === `${draft.id}.draft` ? draft : null;
  }

  #pathOf(id: string): string {
    return join(this.#folder, `${id}.draft`);
  }
}
