import type { Edit } from '../../../../src/index.ts';
import type { Book } from '../../../session/book.svelte.ts';

/** Edits of one view, and why the last of them was refused: it is said where it was made. */
export class Edits {
  readonly #book: Book;
  #refusal = $state.raw<readonly string[]>([]);

  constructor(book: Book) {
    this.#book = book;
  }

  get refusal(): readonly string[] {
    return this.#refusal;
  }

  /** `what` stands on the way back ("Remove Pulp falls"), `said` is read out. True when it was done. */
  async make(edit: Edit, what: string, said: string): Promise<boolean> {
    this.#refusal = await this.#book.session.rebuild(edit, what);
    if (this.#refusal.length > 0) return false;
    this.#book.announcer.say(said);
    return true;
  }

  refuse(sentence: string): void {
    this.#refusal = [sentence];
  }

  forget(): void {
    this.#refusal = [];
  }
}
