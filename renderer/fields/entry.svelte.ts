import type { InputView } from '../../src/index.ts';
import { formatNumber } from '../../src/wording/number-format.ts';
import type { Book } from '../session/book.svelte.ts';
import type { OpenEntry } from '../session/entry-in-hand.ts';
import { readEntry, tidied, type EntryChoice } from './read-entry.ts';
import { readSum } from './read-sum.ts';

/** Prices of fibre are by the tonne of somebody else; their ids end so. */
function isFibrePrice(id: string): boolean {
  return /^material\.[^.]+\.price$/u.test(id);
}

interface Doubt {
  readonly sentences: readonly string[];
  readonly choices: readonly EntryChoice[];
  /** Whether it would be taken with a source named beside it. */
  readonly asksSource?: boolean;
}

/** Where a figure goes that is no input of its own: it answers why the figure was refused, if it was. */
export type Put = (typed: string, source?: string) => Promise<readonly string[]>;

/** What is being typed into one slot. The figure in force stays until what is typed can be read and is allowed. */
export class Entry implements OpenEntry {
  readonly #book: Book;
  readonly #input: () => InputView;
  readonly #put: Put;
  readonly #mayBeEmpty: boolean;
  #draft = $state.raw<string | null>(null);
  #doubt = $state.raw<Doubt | null>(null);
  #hasFocus = $state.raw(false);
  readonly #isOwn: boolean;
  #meaning = $state.raw('');

  readonly text = $derived.by(() => {
    if (this.#draft !== null) return this.#draft;
    const { value } = this.#input();
    return this.#hasFocus ? this.#book.numbers.typing(value) : this.#book.numbers.digits(value);
  });

  /** What is typed comes to: of arithmetic "= 72.50", of a price of fibre "= 666.67 €/bdt"; "" for any other plain figure. */
  readonly result = $derived.by(() => {
    const { numbers } = this.#book;
    const sum = this.#draft === null ? null : readSum(tidied(this.#draft), numbers.decimalMark);
    const parts = [sum === null ? '' : numbers.digits(sum.digits), this.#draft === null ? '' : this.#meaning];
    return parts
      .map((part) => (part === '' ? '' : `= ${part}`))
      .join(' ')
      .trim();
  });

  /** Figures go to the input they stand for, unless `put` takes them. Where a slot may be empty, nothing typed is put as "". */
  constructor(book: Book, input: () => InputView, put?: Put, mayBeEmpty = false) {
    this.#book = book;
    this.#input = input;
    this.#isOwn = put === undefined;
    this.#put = put ?? ((typed, source) => book.session.change(input().id, typed, source));
    this.#mayBeEmpty = mayBeEmpty;
  }

  /** Why the figure typed is not in force; null when it is. */
  get doubt(): Doubt | null {
    return this.#doubt;
  }

  get isPending(): boolean {
    return this.#draft !== null;
  }

  type(text: string): void {
    this.#draft = text;
    this.#doubt = null;
    this.#book.inHand.take(this);
    void this.#tellMeaning(text);
  }

  /** A price names its tonne: what it comes to in the model's own unit stands beside it while it is typed. */
  async #tellMeaning(text: string): Promise<void> {
    const { id } = this.#input();
    if (!this.#isOwn || !isFibrePrice(id)) return;
    const { numbers, session } = this.#book;
    const reading = readEntry(text, numbers.decimalMark);
    const echo = reading.kind === 'read' ? await session.echo(id, reading.typed) : null;
    if (this.#draft !== text) return;
    this.#meaning =
      echo === null
        ? ''
        : `${formatNumber(echo.perBoneDry, { locale: numbers.locale, decimals: 2 })} ${numbers.unit(echo.unit)}`;
  }

  enter(): void {
    this.#hasFocus = true;
  }

  leave(): Promise<boolean> {
    this.#hasFocus = false;
    return this.commit();
  }

  async commit(source?: string): Promise<boolean> {
    if (this.#draft === null) return true;
    if (this.#mayBeEmpty && this.#draft.trim() === '') return this.choose('');
    const reading = readEntry(this.#draft, this.#book.numbers.decimalMark);
    switch (reading.kind) {
      case 'read':
        return this.choose(reading.typed, source);
      case 'either':
        this.#doubt = { sentences: [reading.sentence], choices: reading.choices };
        return false;
      case 'unreadable':
        this.#doubt = { sentences: [reading.sentence], choices: [] };
        return false;
    }
  }

  /** Puts a reading in force, unless the engine refuses it. */
  async choose(typed: string, source?: string): Promise<boolean> {
    const drafted = this.#draft;
    const sentences = await this.#put(typed, source);
    if (sentences.length > 0) {
      const asksSource = this.#input().boundary !== undefined;
      this.#doubt = { sentences, choices: [], asksSource };
      return false;
    }
    // Typing may have gone on while the engine worked; then there is a newer draft to keep.
    if (this.#draft === drafted) this.revert();
    return true;
  }

  revert(): void {
    this.#draft = null;
    this.#doubt = null;
    this.#book.inHand.release(this);
  }
}
