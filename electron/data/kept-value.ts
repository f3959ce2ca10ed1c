import * as v from 'valibot';
import { replaceFile } from '../files/replace-file.ts';
import type { SaveMeans } from '../files/save-means.ts';

/**
 * One value in a file of the program's data folder. A file that is missing, damaged or of another form gives the usual value: no
 * setting may keep the program from starting. Writes go one after the other, and of those that wait only the newest is written.
 */
export class KeptValue<Value> {
  readonly #path: string;
  readonly #schema: v.GenericSchema<unknown, Value>;
  readonly #usual: Value;
  readonly #means: SaveMeans;
  #waiting: { readonly value: Value } | null = null;
  #writing: Promise<void> | null = null;

  constructor(path: string, schema: v.GenericSchema<unknown, Value>, usual: Value, means: SaveMeans) {
    this.#path = path;
    this.#schema = schema;
    this.#usual = usual;
    this.#means = means;
  }

  async read(): Promise<Value> {
    try {
      const text = new TextDecoder().decode(await this.#means.files.readFile(this.#path));
      const read = v.safeParse(this.#schema, JSON.parse(text));
      return read.success ? read.output : this.#usual;
    } catch {
      return this.#usual;
    }
  }

  /** Settles once this value, or a newer one, is on the disk; rejects with what the system said. */
  write(value: Value): Promise<void> {
    this.#waiting = { value };
    this.#writing ??= this.#writeAll().finally(() => (this.#writing = null));
    return this.#writing;
  }

  async #writeAll(): Promise<void> {
    for (let next = this.#waiting; next !== null; next = this.#waiting) {
      this.#waiting = null;
      const text = `${JSON.stringify(next.value, null, 2)}\n`;
      await replaceFile(this.#path, new TextEncoder().encode(text), this.#means);
    }
  }
}
