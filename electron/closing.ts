/** What the person answers when a window with unsaved edits is to close. */
export type CloseAnswer = 'save' | 'discard' | 'stay';

export interface ClosingWindow {
  ask(): Promise<CloseAnswer>;
  requestSave(): void;
  /** Closes without asking again. What becomes of the unsaved edits is decided. */
  destroy(): Promise<void>;
  now(): number;
}

/** A screen that was asked to save does so at once; a save that begins later is the person's own and closes nothing. */
const promptMilliseconds = 5000;

/** Decides about closing a window: at once, or after asking what becomes of the unsaved edits. */
export class Closing {
  readonly #window: ClosingWindow;
  #edited = false;
  #asking = false;
  #saveRequested: number | null = null;

  constructor(window: ClosingWindow) {
    this.#window = window;
  }

  get isEdited(): boolean {
    return this.#edited;
  }

  setEdited(edited: boolean): void {
    this.#edited = edited;
  }

  /** Called when something wants to close the window; holds it open while there is something to lose. */
  onClose(event: { preventDefault(): void }): void {
    if (!this.#edited) return;
    event.preventDefault();
    if (!this.#asking) void this.#settle();
  }

  async #settle(): Promise<void> {
    this.#asking = true;
    const answer = await this.#window.ask().finally(() => (this.#asking = false));
    if (answer === 'discard') await this.#window.destroy();
    if (answer !== 'save') return;
    this.#saveRequested = this.#window.now();
    this.#window.requestSave();
  }

  /** Runs a save, and closes the window after it when that was the reason and the work is on the disk. */
  async afterSave<Outcome extends { readonly kind: string }>(save: () => Promise<Outcome>): Promise<Outcome> {
    const closes = this.#saveRequested !== null && this.#window.now() - this.#saveRequested <= promptMilliseconds;
    this.#saveRequested = null;
    const outcome = await save();
    if (closes && outcome.kind === 'saved') await this.#window.destroy();
    return outcome;
  }
}
