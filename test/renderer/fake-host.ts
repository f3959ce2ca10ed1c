import type { FileOutcome, Host, KeepOutcome, LeftDraft, SaveOutcome, TakenDraft } from '../../electron/host.ts';
import { type Preferences, usualPreferences } from '../../electron/preferences.ts';

/** A host whose person answers as the test says; it keeps what was written to which file, as a disk does. */
export class FakeHost {
  readonly kind = 'desktop';
  readonly disk = new Map<string, string>();
  nextFile: FileOutcome = { kind: 'cancelled' };
  nextPlace = 'mill.tonne';
  starting: FileOutcome | null = null;
  failure: string | null = null;
  /** Another program changed the open file: the next plain save meets that. */
  isForeign = false;
  edited: readonly [boolean, string] = [false, ''];
  readonly kept: (string | null)[] = [];
  keeping: KeepOutcome = { kind: 'kept' };
  left: readonly LeftDraft[] = [];
  taking: TakenDraft = { kind: 'taken', name: null };
  readonly taken: string[] = [];
  readonly forgotten: string[] = [];
  preferences: Preferences = usualPreferences;
  #open: string | null = null;

  asHost(): Host {
    return {
      kind: this.kind,
      numberLocale: () => Promise.resolve('en-GB'),
      startingCase: () => Promise.resolve(this.starting === null ? null : this.#opened(this.starting)),
      openCase: () => Promise.resolve(this.#opened(this.nextFile)),
      openGiven: () => Promise.resolve(this.#opened(this.nextFile)),
      openDropped: () => Promise.resolve(this.#opened(this.nextFile)),
      reloadCase: () => Promise.resolve(this.#opened(this.nextFile)),
      saveCase: (text) => Promise.resolve(this.#save(text)),
      saveCaseOver: (text) => Promise.resolve(this.#write(this.#open ?? this.nextPlace, text)),
      saveCaseAs: (text) => Promise.resolve(this.#write(this.nextPlace, text)),
      saveWorkbook: () => Promise.resolve({ kind: 'cancelled' }),
      setEdited: (edited, title) => {
        this.edited = [edited, title];
        return Promise.resolve();
      },
      keepDraft: (text) => {
        this.kept.push(text);
        return Promise.resolve(this.keeping);
      },
      leftDrafts: () => Promise.resolve(this.left),
      takeDraft: (id) => {
        this.taken.push(id);
        this.#open = this.taking.kind === 'taken' ? this.taking.name : null;
        return Promise.resolve(this.taking);
      },
      forgetDraft: (id) => {
        this.forgotten.push(id);
        return Promise.resolve();
      },
      preferences: () => Promise.resolve(this.preferences),
      setPreferences: (preferences) => {
        this.preferences = preferences;
        return Promise.resolve();
      },
      versions: () => Promise.resolve([{ name: 'Tonne for Tonne', version: '0.1.0' }]),
      onCommand: () => () => undefined,
    };
  }

  // As the real hosts do: a file that was read is the one that the next save writes to.
  #opened(outcome: FileOutcome): FileOutcome {
    if (outcome.kind === 'read') this.#open = outcome.name;
    return outcome;
  }

  #save(text: string): SaveOutcome {
    const name = this.#open ?? this.nextPlace;
    return this.isForeign ? { kind: 'changed', name } : this.#write(name, text);
  }

  #write(name: string, text: string): SaveOutcome {
    if (this.failure !== null) return { kind: 'failed', sentence: this.failure };
    this.disk.set(name, text);
    this.#open = name;
    return { kind: 'saved', name };
  }
}
