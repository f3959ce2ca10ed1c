import type { KeepOutcome } from '../../electron/host.ts';

// Keystrokes come faster than a disk should be asked; with the write itself this stays well below a second.
const gatherMilliseconds = 250;

/** Has unsaved work kept soon after every edit. Says so once when that does not go, and again only after it did. */
export class DraftKeeper {
  readonly #keep: (text: string | null, title: string) => Promise<KeepOutcome>;
  readonly #tell: (sentence: string) => void;
  #newest: { readonly text: string; readonly title: string } | null = null;
  #isGathering = false;
  #isKept = false;
  #hasFailed = false;

  constructor(keep: (text: string | null, title: string) => Promise<KeepOutcome>, tell: (sentence: string) => void) {
    this.#keep = keep;
    this.#tell = tell;
  }

  /** The unsaved work as it is now; null when nothing is unsaved. */
  note(text: string | null, title: string): void {
    this.#newest = text === null ? null : { text, title };
    if (text === null) {
      // A screen that begins has nothing unsaved, and must not take away what an earlier one left.
      if (this.#isKept) void this.#send(null, title);
      this.#isKept = false;
      return;
    }
    this.#isKept = true;
    if (this.#isGathering) return;
    this.#isGathering = true;
    setTimeout(() => {
      this.#isGathering = false;
      if (this.#newest !== null) void this.#send(this.#newest.text, this.#newest.title);
    }, gatherMilliseconds);
  }

  async #send(text: string | null, title: string): Promise<void> {
    const outcome = await this.#keep(text, title);
    if (outcome.kind === 'failed' && !this.#hasFailed) this.#tell(outcome.sentence);
    this.#hasFailed = outcome.kind === 'failed';
  }
}
