/** One edit: the case as it was on the other side of it, and what was changed. */
interface Step {
  readonly text: string;
  readonly what: string;
}

/** The way back and forth through the edits of a case, as its canonical texts. */
export class History {
  #past = $state.raw<readonly Step[]>([]);
  #future = $state.raw<readonly Step[]>([]);

  /** What undo would take back; null when there is nothing. */
  get undoes(): string | null {
    return this.#past.at(-1)?.what ?? null;
  }

  get redoes(): string | null {
    return this.#future.at(-1)?.what ?? null;
  }

  record(before: string, what: string): void {
    this.#past = [...this.#past, { text: before, what }];
    this.#future = [];
  }

  /** The text to go back to, given the text now. */
  undo(now: string): string | null {
    const step = this.#past.at(-1);
    if (step === undefined) return null;
    this.#past = this.#past.slice(0, -1);
    this.#future = [...this.#future, { text: now, what: step.what }];
    return step.text;
  }

  redo(now: string): string | null {
    const step = this.#future.at(-1);
    if (step === undefined) return null;
    this.#future = this.#future.slice(0, -1);
    this.#past = [...this.#past, { text: now, what: step.what }];
    return step.text;
  }

  clear(): void {
    this.#past = [];
    this.#future = [];
  }
}
