import { createContext } from 'svelte';
import type { BasisChoices, BasisOptions, Footprint, RouteFootprint } from '../../../src/index.ts';
import type { FootprintAnswer } from '../../engine/messages.ts';
import type { Book } from '../../session/book.svelte.ts';
import { carbonScale, energyScale, massScale, volumeScale } from './scales.ts';

/** What the page of waste and carbon shows: the footprint as of now, and in which measure. */
export class WasteDesk {
  readonly #book: Book;
  #answer = $state.raw<FootprintAnswer | null>(null);
  #refusal = $state.raw<readonly string[]>([]);
  #chosen = $state.raw<readonly string[]>([]);

  constructor(book: Book) {
    this.#book = book;
  }

  get footprint(): Footprint | null {
    return this.#answer?.footprint ?? null;
  }

  get choices(): BasisChoices | null {
    return this.#answer?.choices ?? null;
  }

  /** Why a choice of the basis was refused. */
  get refusal(): readonly string[] {
    return this.#refusal;
  }

  /** What of the basis somebody has just chosen: "fuel", "grid". */
  get chosen(): readonly string[] {
    return this.#chosen;
  }

  /** Saleable tonnes a year. */
  get tonnes(): number {
    return this.footprint?.tonnesPerYear ?? Number.NaN;
  }

  readonly mass = $derived.by(() => massScale(this.#book.wastePlace.per, this.tonnes));
  readonly carbon = $derived.by(() => carbonScale(this.#book.wastePlace.per, this.tonnes));
  readonly volume = $derived.by(() => volumeScale(this.#book.wastePlace.per, this.tonnes));
  readonly power = $derived.by(() => this.#energy('electricity'));
  readonly heat = $derived.by(() => this.#energy('heat'));
  /** "a tonne", "a year". */
  readonly per = $derived.by(() => `a ${this.#book.wastePlace.per}`);

  #energy(source: 'electricity' | 'heat') {
    const { energyUnit, per } = this.#book.wastePlace;
    return energyScale(source, energyUnit, per, this.tonnes);
  }

  /** The two routes that face each other. */
  readonly facing = $derived.by((): { readonly base: RouteFootprint; readonly with: RouteFootprint } | null => {
    const { footprint } = this;
    const base = footprint?.routes.find(({ id }) => id === footprint.difference.base);
    const other = footprint?.routes.find(({ id }) => id === footprint.difference.with);
    return base === undefined || other === undefined ? null : { base, with: other };
  });

  async refresh(): Promise<void> {
    const answer = await this.#book.session.footprint();
    if (answer !== null) this.#answer = answer;
  }

  /** Cash is what holds unless the case says otherwise: null takes the choice away. */
  async setAllocationView(view: 'opportunity' | null): Promise<void> {
    this.#refusal = await this.#book.session.rebuild(
      { kind: 'set carbon price', scheme: { view } },
      'How free allocation is seen',
    );
  }

  async setBasis(basis: BasisOptions, what: string): Promise<void> {
    this.#chosen = [...this.#chosen, ...Object.keys(basis)];
    this.#refusal = await this.#book.session.rebuild({ kind: 'set basis', basis }, what);
  }
}

export const [useWasteDesk, provideWasteDesk] = createContext<WasteDesk>();
