import { createContext } from 'svelte';
import {
  withFigure,
  withReadings,
  type Lot,
  type LotField,
  type Lots,
  type LotsView,
  type PricedLot,
} from '../../../src/index.ts';
import type { Book } from '../../session/book.svelte.ts';

/** Lots as the page shows them: worked out anew while somebody types, and kept in the case once a field is left. */
export class LotsDesk {
  readonly #book: Book;
  readonly #today: string;
  #view = $state.raw<LotsView | null | undefined>(undefined);
  #refusal = $state.raw<readonly string[]>([]);

  constructor(book: Book, today: string) {
    this.#book = book;
    this.#today = today;
  }

  get today(): string {
    return this.#today;
  }

  /** Null where no line is fed recovered paper; undefined until that is known. */
  get view(): LotsView | null | undefined {
    return this.#view;
  }

  /** Why the last change was refused. */
  get refusal(): readonly string[] {
    return this.#refusal;
  }

  /** The lot on the table. */
  readonly chosen = $derived.by((): PricedLot | null => {
    const lots = this.view?.lots ?? [];
    return lots.find(({ lot }) => lot.id === this.#book.lotsPlace.lot) ?? lots[0] ?? null;
  });

  get isHidden(): boolean {
    return this.#book.lotsPlace.isHidden;
  }

  hide(isHidden: boolean): void {
    this.#book.lotsPlace.isHidden = isHidden;
    this.#book.session.working.putAway();
    this.#book.announcer.say(isHidden ? 'Your limits are hidden.' : 'Your limits are shown.');
  }

  choose(lot: string): void {
    this.#book.lotsPlace.lot = lot;
  }

  async refresh(draft: Lots | null = null): Promise<void> {
    const view = await this.#book.session.lots(this.#today, draft);
    if (view !== undefined) this.#view = view;
  }

  /** Shows what plain digits, or readings with spaces between, would come to before they are kept. */
  preview(field: LotField, plain: string): void {
    const lot = this.chosen?.lot;
    const content = this.view?.content;
    if (lot === undefined || content === undefined) return;
    const changed =
      field === 'moisture' || field === 'unusable'
        ? withReadings(lot, field, plain === '' ? [] : plain.split(' '))
        : withFigure(lot, field, plain === '' ? undefined : plain);
    const offers = content.offers.map((each) => (each.id === lot.id ? changed : each));
    void this.refresh({ ...content, offers });
  }

  /** Keeps what was typed. Returns why it was refused, if it was. */
  async put(field: LotField, typed: string, label: string): Promise<readonly string[]> {
    const lot = this.chosen?.lot;
    if (lot === undefined) return [];
    const refusal = await this.#book.session.changeLot(lot.id, field, typed, `${label}, ${lot.label}`);
    await this.refresh();
    return refusal;
  }

  /** Changes a lot in any other way. */
  async change(lot: Lot, what: string): Promise<void> {
    this.#refusal = await this.#book.session.rebuild({ kind: 'put lot', lot }, what);
  }

  async set(options: Omit<{ [Key in keyof Lots]?: Lots[Key] | null }, 'offers'>, what: string): Promise<void> {
    this.#refusal = await this.#book.session.rebuild({ kind: 'set lots', options }, what);
  }

  /** Begins a lot and lays it on the table. */
  async add(): Promise<void> {
    const fresh = this.view?.fresh;
    if (fresh === undefined) return;
    await this.change(fresh, 'New lot');
    this.choose(fresh.id);
  }

  async remove(): Promise<void> {
    const lot = this.chosen?.lot;
    if (lot === undefined) return;
    this.#refusal = await this.#book.session.rebuild({ kind: 'remove lot', lot: lot.id }, `Remove ${lot.label}`);
  }
}

export const [useLotsDesk, provideLotsDesk] = createContext<LotsDesk>();
