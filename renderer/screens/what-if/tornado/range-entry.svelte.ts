import type { Swing } from '../../../../src/index.ts';
import type { EntryChoice } from '../../../fields/read-entry.ts';
import type { Book } from '../../../session/book.svelte.ts';
import { lowerFirst } from '../../../numbers/letter-case.ts';
import { readRange } from './read-range.ts';

interface Refusal {
  readonly end: 'low' | 'high' | null;
  readonly sentences: readonly string[];
  readonly choices: readonly EntryChoice[];
}

/** The range of one input while it is being typed; the one in force stays until this one is put in its place. */
export class RangeEntry {
  readonly #book: Book;
  readonly #swing: Swing;
  low = $state('');
  high = $state('');
  #refusal = $state.raw<Refusal | null>(null);

  constructor(book: Book, swing: Swing) {
    this.#book = book;
    this.#swing = swing;
    this.low = book.numbers.typing(plain(swing.low));
    this.high = book.numbers.typing(plain(swing.high));
  }

  /** Why it was not put in force; null where nothing stands against it. */
  get refusal(): Refusal | null {
    return this.#refusal;
  }

  type(end: 'low' | 'high', text: string): void {
    this[end] = text;
    this.#refusal = null;
  }

  /** Puts what was typed in force. False when it cannot be read or is refused. */
  async put(): Promise<boolean> {
    const { id, unit } = this.#swing;
    const reading = readRange(this.low, this.high, unit, this.#book.numbers.decimalMark);
    if (reading.kind === 'refused') {
      this.#refusal = { end: reading.end, sentences: [reading.sentence], choices: reading.choices };
      return false;
    }
    return this.#edit({ low: reading.low, high: reading.high }, id);
  }

  /** Back to the range that the program knows, if any. */
  takeBack(): Promise<boolean> {
    return this.#edit(null, this.#swing.id);
  }

  /** Takes one of two readings, and tries again. */
  choose(typed: string): Promise<boolean> {
    const end = this.#refusal?.end;
    if (end === 'low' || end === 'high') this.type(end, this.#book.numbers.typing(typed));
    return this.put();
  }

  async #edit(range: { readonly low: string; readonly high: string } | null, input: string): Promise<boolean> {
    const edit = { kind: 'set range', input, range } as const;
    const sentences = await this.#book.session.rebuild(edit, `Range of ${lowerFirst(this.#swing.label)}`);
    this.#refusal = sentences.length === 0 ? null : { end: null, sentences, choices: [] };
    return sentences.length === 0;
  }
}

const mostDecimals = 12;

/** Plain digits, without what binary fractions add and without powers of ten. */
function plain(value: number): string {
  const text = String(Number(value.toPrecision(mostDecimals)));
  return text.includes('e') ? value.toFixed(mostDecimals).replace(/\.?0+$/u, '') : text;
}
