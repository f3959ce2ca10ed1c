import type { KeptValue } from '../data/kept-value.ts';
import type { SaveMeans } from '../files/save-means.ts';
import { type RecentFile, lookFor, withRecent } from './recent-files.ts';

/** The list of files that were opened or saved last. */
export class RecentList {
  readonly #kept: Pick<KeptValue<readonly string[]>, 'read' | 'write'>;
  readonly #means: SaveMeans;
  readonly #show: (recent: readonly RecentFile[]) => void;
  #paths: readonly string[] = [];

  constructor(
    kept: Pick<KeptValue<readonly string[]>, 'read' | 'write'>,
    means: SaveMeans,
    show: (recent: readonly RecentFile[]) => void,
  ) {
    this.#kept = kept;
    this.#means = means;
    this.#show = show;
  }

  async load(): Promise<void> {
    this.#paths = await this.#kept.read();
    // What was never looked for is taken to be there until it is known not to be.
    this.#show(this.#paths.map((path) => ({ path, isThere: true })));
    void this.look();
  }

  add(path: string): Promise<void> {
    return this.#become(withRecent(this.#paths, path));
  }

  clear(): Promise<void> {
    return this.#become([]);
  }

  /** Looks anew which files are there: a stick may have been taken out meanwhile. */
  async look(): Promise<void> {
    const paths = this.#paths;
    const found = await lookFor(paths, (path) => this.#means.files.stat(path), this.#means.wait);
    if (paths === this.#paths) this.#show(found);
  }

  async #become(paths: readonly string[]): Promise<void> {
    this.#paths = paths;
    await Promise.all([this.look(), this.#kept.write(paths).catch(() => undefined)]);
  }
}
