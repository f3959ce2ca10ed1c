import type { FileOutcome, Host, SaveOutcome } from '../../electron/host.ts';

/** A host whose person answers as the test says; it keeps what was written to which file, as a disk does. */
export class FakeHost {
  readonly kind = 'desktop';
  readonly disk = new Map<string, string>();
  nextFile: FileOutcome = { kind: 'cancelled' };
  nextPlace = 'mill.tonne';
  starting: FileOutcome | null = null;
  failure: string | null = null;
  edited: readonly [boolean, string] = [false, ''];
  #open: string | null = null;

  numberLocale(): Promise<string> {
    return Promise.resolve('en-GB');
  }

  startingCase(): Promise<FileOutcome | null> {
    return Promise.resolve(this.starting === null ? null : this.#opened(this.starting));
  }

  openCase(): Promise<FileOutcome> {
    return Promise.resolve(this.#opened(this.nextFile));
  }

  saveCase(text: string): Promise<SaveOutcome> {
    return Promise.resolve(this.#write(this.#open ?? this.nextPlace, text));
  }

  saveCaseAs(text: string): Promise<SaveOutcome> {
    return Promise.resolve(this.#write(this.nextPlace, text));
  }

  asHost(): Host {
    return {
      kind: this.kind,
      numberLocale: () => this.numberLocale(),
      startingCase: () => this.startingCase(),
      openCase: () => this.openCase(),
      saveCase: (text) => this.saveCase(text),
      saveCaseAs: (text) => this.saveCaseAs(text),
      saveWorkbook: () => Promise.resolve({ kind: 'cancelled' }),
      setEdited: (edited, title) => {
        this.edited = [edited, title];
        return Promise.resolve();
      },
      onCommand: () => () => undefined,
    };
  }

  // As the real hosts do: a file that was read is the one that the next save writes to.
  #opened(outcome: FileOutcome): FileOutcome {
    if (outcome.kind === 'read') this.#open = outcome.name;
    return outcome;
  }

  #write(name: string, text: string): SaveOutcome {
    if (this.failure !== null) return { kind: 'failed', sentence: this.failure };
    this.disk.set(name, text);
    this.#open = name;
    return { kind: 'saved', name };
  }
}
