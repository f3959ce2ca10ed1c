import type { Explanation } from '../../src/index.ts';
import type { EngineClient } from '../engine/engine-client.ts';

/** The slip: which figure is being explained, and which of its ingredients are unfolded under it. */
export class Working {
  readonly #engine: Pick<EngineClient, 'askNewest'>;
  readonly #onFault: (fault: unknown) => void;
  /** The lot in whose case figures are explained; null for the case as it stands. */
  #lot = $state.raw<string | null>(null);
  #trail = $state.raw<readonly string[]>([]);
  #unfolded = $state.raw<readonly string[]>([]);
  #explanations = $state.raw<readonly Explanation[]>([]);

  constructor(engine: Pick<EngineClient, 'askNewest'>, onFault: (fault: unknown) => void) {
    this.#engine = engine;
    this.#onFault = onFault;
  }

  /** The figure the slip is about; null when the slip is put away. */
  get id(): string | null {
    return this.#trail.at(-1) ?? null;
  }

  get explanation(): Explanation | null {
    return this.id === null ? null : this.of(this.id);
  }

  /** The figure one came from, by a step of the working or by what it goes into. */
  get previous(): Explanation | null {
    const id = this.#trail.at(-2);
    return id === undefined ? null : this.of(id);
  }

  of(id: string): Explanation | null {
    return this.#explanations.find((explanation) => explanation.id === id) ?? null;
  }

  isUnfolded(path: string): boolean {
    return this.#unfolded.includes(path);
  }

  get lot(): string | null {
    return this.#lot;
  }

  /** Opens the slip at a figure of the page: a fresh trail. */
  show(id: string, lot: string | null = null): Promise<void> {
    this.#lot = lot;
    return this.#turnTo([id]);
  }

  follow(id: string): Promise<void> {
    return this.#turnTo([...this.#trail, id]);
  }

  back(): Promise<void> {
    return this.#turnTo(this.#trail.slice(0, -1));
  }

  putAway(): void {
    this.#trail = [];
    this.#unfolded = [];
    this.#explanations = [];
  }

  /** Folds or unfolds an ingredient; `path` is its place under the figure, since one ingredient can stand in several. */
  async toggle(path: string): Promise<void> {
    const others = this.#unfolded.filter((unfolded) => unfolded !== path);
    this.#unfolded = others.length < this.#unfolded.length ? others : [...others, path];
    await this.refresh();
  }

  /** Asks again for everything on the slip, after a change of the case. */
  async refresh(): Promise<void> {
    if (this.id === null) return;
    const ids = [...this.#trail, ...this.#unfolded.map(lastOf)];
    try {
      const answers = await (this.#lot === null
        ? this.#engine.askNewest('explain', { ids })
        : this.#engine.askNewest('explainLot', { lot: this.#lot, ids }));
      if (answers === null) return;
      this.#explanations = answers.filter((answer) => answer !== null);
    } catch (fault) {
      this.#onFault(fault);
    }
  }

  async #turnTo(trail: readonly string[]): Promise<void> {
    this.#trail = trail;
    this.#unfolded = [];
    await this.refresh();
  }
}

const between = ' > ';

/** The place of an ingredient under another. */
export function pathUnder(parent: string, id: string): string {
  return `${parent}${between}${id}`;
}

function lastOf(path: string): string {
  return path.slice(path.lastIndexOf(between) + between.length);
}
