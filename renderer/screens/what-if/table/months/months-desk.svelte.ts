import type { Book } from '../../../../session/book.svelte.ts';
import type { WhatIfDesk } from '../../what-if-desk.svelte.ts';
import { monthsText, pastedMonths } from './months-text.ts';

/** What a person writes into the box of months, until the case keeps it. */
export class MonthsDesk {
  readonly #book: Book;
  readonly #desk: Pick<WhatIfDesk, 'months'>;
  /** Null while the box shows what the case holds. */
  #written = $state.raw<string | null>(null);
  #chosen = $state.raw<{ readonly pulp?: string; readonly recovered?: string }>({});
  #refused = $state.raw<readonly string[]>([]);

  constructor(book: Book, desk: Pick<WhatIfDesk, 'months'>) {
    this.#book = book;
    this.#desk = desk;
  }

  get refused(): readonly string[] {
    return this.#refused;
  }

  readonly text = $derived.by(
    () => this.#written ?? monthsText(this.#desk.months?.kept?.points ?? [], this.#book.numbers.decimalMark),
  );

  /** Which two inputs the months are of: as chosen here, else as kept, else the usual ones. */
  readonly inputs = $derived.by(() => {
    const known = this.#desk.months?.kept ?? this.#desk.months?.usual;
    return {
      pulp: this.#chosen.pulp ?? known?.pulp ?? '',
      recovered: this.#chosen.recovered ?? known?.recovered ?? '',
    };
  });

  write(text: string): void {
    this.#written = text;
    this.#refused = [];
  }

  choose(side: 'pulp' | 'recovered', id: string): void {
    this.#chosen = { ...this.#chosen, [side]: id };
  }

  /** Keeps all rows in the case, or none where one of them is no month: then the text stays as it is, and each such row is told. */
  async keep(): Promise<void> {
    const { points, refused } = pastedMonths(this.text, this.#book.numbers.decimalMark);
    if (refused.length > 0) this.#refused = refused;
    else await this.#put({ ...this.inputs, points }, 'Months of prices', `${points.length} months are kept.`);
  }

  takeAway(): Promise<void> {
    return this.#put(null, 'Take the months away', 'The months are taken away.');
  }

  async #put(months: NonNullable<WhatIfDesk['months']>['kept'], what: string, said: string): Promise<void> {
    this.#refused = await this.#book.session.rebuild({ kind: 'set months', months }, what);
    if (this.#refused.length > 0) return;
    this.#written = null;
    this.#chosen = {};
    this.#book.announcer.say(said);
  }
}
