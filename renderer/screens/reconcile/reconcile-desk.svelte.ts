import { createContext } from 'svelte';
import type { ReconciledGroup, ReconciledRow } from '../../../src/index.ts';
import type { Book } from '../../session/book.svelte.ts';
import type { Per } from '../../session/waste-place.svelte.ts';
import { actualAfter, shownRow } from './measured-row.ts';

/** Measured figures beside computed ones, asked anew after every edit; older answers stay until newer ones come. */
export class ReconcileDesk {
  readonly #book: Book;
  #groups = $state.raw<readonly ReconciledGroup[]>([]);
  /** Whether rows without a measured figure are shown for a tonne or for a year. */
  per = $state.raw<Per>('tonne');

  constructor(book: Book) {
    this.#book = book;
  }

  get groups(): readonly ReconciledGroup[] {
    return this.#groups;
  }

  /** How many figures were measured, and how many of them lie far from what is computed. */
  readonly count = $derived.by(() => {
    const actuals = this.#groups.flatMap(({ rows }) => rows.flatMap(({ actual }) => actual ?? []));
    return { measured: actuals.length, wide: actuals.filter(({ isWide }) => isWide).length };
  });

  async refresh(): Promise<void> {
    this.#groups = (await this.#book.session.reconcile()) ?? this.#groups;
  }

  /** Puts a figure, its period or its source in force; a figure that is emptied goes, with what was said of it. */
  put(row: ReconciledRow, change: Parameters<typeof actualAfter>[2]): Promise<readonly string[]> {
    const { session } = this.#book;
    const what = `Measured: ${row.label}`;
    if (change.typed === '')
      return row.actual === null
        ? Promise.resolve([])
        : session.rebuild({ kind: 'remove actual', result: row.result }, what);
    return session.rebuild({ kind: 'put actual', actual: actualAfter(row, shownRow(row, this.per), change) }, what);
  }
}

export const [useReconcileDesk, provideReconcileDesk] = createContext<ReconcileDesk>();
