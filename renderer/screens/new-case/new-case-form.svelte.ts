import type { FurnishChoice, NewCase, ProductChoice } from '../../../src/index.ts';
import type { RouteOutline } from '../../engine/route-outline.ts';
import { readEntry } from '../../fields/read-entry.ts';
import type { Book } from '../../session/book.svelte.ts';

export type Side = 'virgin' | 'recovered';

/** What is asked of a person who starts a case, and the draft that is worked out from the answers. */
export class NewCaseForm {
  readonly draft: Book;
  #products = $state.raw<readonly ProductChoice[]>([]);
  #product = $state.raw<ProductChoice | null>(null);
  #furnish = $state.raw<Readonly<Record<Side, string>>>({ virgin: '', recovered: '' });
  #tonnes = $state.raw('');
  #title = $state.raw('');
  #currency = $state.raw('EUR');
  #priceYear = $state.raw('2024');
  #sentences = $state.raw<readonly string[]>([]);
  #routes = $state.raw<readonly RouteOutline[]>([]);

  constructor(draft: Book) {
    this.draft = draft;
  }

  get products(): readonly ProductChoice[] {
    return this.#products;
  }

  get product(): ProductChoice | null {
    return this.#product;
  }

  get tonnes(): string {
    return this.#tonnes;
  }

  /** With the separators of the locale, as long as it is a plain number. */
  get tonnesAtRest(): string {
    return /^\d+(\.\d+)?$/u.test(this.#tonnes) ? this.draft.numbers.digits(this.#tonnes) : this.#tonnes;
  }

  get title(): string {
    return this.#title;
  }

  get currency(): string {
    return this.#currency;
  }

  get priceYear(): string {
    return this.#priceYear;
  }

  /** Why there is no draft yet, or why the last answer was not taken. */
  get sentences(): readonly string[] {
    return this.#sentences;
  }

  get isStarted(): boolean {
    return this.draft.session.spread !== null;
  }

  choicesOf(side: Side): readonly FurnishChoice[] {
    return this.#product?.[side] ?? [];
  }

  furnishOf(side: Side): FurnishChoice | null {
    return this.choicesOf(side).find(({ id }) => id === this.#furnish[side]) ?? null;
  }

  routeOf(side: Side): RouteOutline | null {
    return this.#routes.find(({ id }) => id === side) ?? null;
  }

  async open(): Promise<void> {
    const { products } = await this.draft.session.choices();
    this.#products = products;
    const [first] = products;
    if (this.#product === null && first !== undefined) await this.make(first);
  }

  async make(product: ProductChoice): Promise<void> {
    this.#product = product;
    this.#furnish = { virgin: product.virgin[0]?.id ?? '', recovered: product.recovered[0]?.id ?? '' };
    await this.#start();
  }

  async prepare(side: Side, furnish: string): Promise<void> {
    this.#furnish = { ...this.#furnish, [side]: furnish };
    await this.#start();
  }

  /** Takes what was typed; where it cannot be read, says so and keeps it on the screen. */
  async give(answer: 'tonnes' | 'title' | 'currency' | 'priceYear', typed: string): Promise<void> {
    const text = typed.trim();
    if (answer === 'tonnes') this.#tonnes = text;
    else if (answer === 'title') this.#title = text;
    else if (answer === 'currency') this.#currency = text.toUpperCase();
    else this.#priceYear = text;
    await this.#start();
  }

  /** After an edit of the draft: its shares and trains as they are now. */
  async refresh(): Promise<void> {
    if (!this.isStarted) return;
    const answer = await this.draft.session.line('virgin', '');
    if (answer !== null) this.#routes = answer.routes;
  }

  async #start(): Promise<void> {
    const wanted = this.#wanted();
    if (wanted === null) return;
    const { session } = this.draft;
    const given = Object.values(session.spread?.inputs ?? {}).filter(
      ({ id, touched }) => touched && id.startsWith('material.'),
    );
    this.#sentences = await session.start(wanted);
    if (this.#sentences.length > 0) return;
    // What was typed of a grade that is bought again is kept.
    for (const { id, value } of given) {
      if (session.spread?.inputs[id] !== undefined) await session.change(id, value);
    }
    session.history.clear();
    await this.refresh();
  }

  #wanted(): NewCase | null {
    if (this.#tonnes === '') return null;
    const reading = readEntry(this.#tonnes, this.draft.numbers.decimalMark);
    if (reading.kind !== 'read' || !/^\d+(\.\d+)?$/u.test(reading.typed)) {
      this.#sentences = [reading.kind === 'read' ? 'Tonnes a year are a plain number.' : reading.sentence];
      return null;
    }
    return {
      title: this.#title === '' ? `${this.#product?.product ?? ''}: virgin or recovered` : this.#title,
      virgin: this.#furnish.virgin,
      recovered: this.#furnish.recovered,
      tonnesPerYear: reading.typed,
      currency: this.#currency,
      priceYear: this.#priceYear,
    };
  }
}

const forms = new WeakMap<Book, NewCaseForm>();

/** The form stays filled in while other pages are read. */
export function formOf(draft: Book): NewCaseForm {
  const form = forms.get(draft) ?? new NewCaseForm(draft);
  forms.set(draft, form);
  return form;
}
