/** A figure that is typed but not yet in force. */
export interface OpenEntry {
  /** Puts it in force; false when it cannot be read. */
  commit(): Promise<boolean>;
  revert(): void;
}

/** Remembers which entry is being typed, so that saving takes it along and undo takes it back first. */
export class EntryInHand {
  #entry: OpenEntry | null = null;

  take(entry: OpenEntry): void {
    this.#entry = entry;
  }

  release(entry: OpenEntry): void {
    if (this.#entry === entry) this.#entry = null;
  }

  commit(): Promise<boolean> {
    return this.#entry?.commit() ?? Promise.resolve(true);
  }

  /** True when there was something to take back. */
  revert(): boolean {
    const entry = this.#entry;
    entry?.revert();
    return entry !== null;
  }
}
