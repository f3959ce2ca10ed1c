import { createContext } from 'svelte';
import type { Sensitivity, BreakEven, TrialSummary, WhatIfTable } from '../../../src/index.ts';
import type { ScenariosAnswer, SwingsAnswer, SwingsQuestion, TableQuestion } from '../../engine/messages.ts';
import type { TrialCrew } from '../../engine/trials/trial-crew.ts';
import type { Book } from '../../session/book.svelte.ts';
import { resultInForce } from '../../session/what-if-place.svelte.ts';

/** How many inputs are asked where the routes tie. */
const tiesAsked = 12;

/** How far trials have come: how many of how many. */
export interface TrialProgress {
  readonly done: number;
  readonly of: number;
}

/** What the page of what-ifs shows, asked anew after every edit; older answers stay on the page until newer ones come. */
export class WhatIfDesk {
  readonly #book: Book;
  readonly #crew: Pick<TrialCrew, 'run' | 'stop'>;
  #swings = $state.raw<SwingsAnswer | null>(null);
  #table = $state.raw<WhatIfTable | null>(null);
  #scenarios = $state.raw<ScenariosAnswer | null>(null);
  #summary = $state.raw<TrialSummary | null>(null);
  #progress = $state.raw<TrialProgress | null>(null);
  #isStopped = $state.raw(false);
  #refusal = $state.raw<readonly string[]>([]);

  constructor(book: Book, crew: Pick<TrialCrew, 'run' | 'stop'>) {
    this.#book = book;
    this.#crew = crew;
  }

  get sensitivity(): Sensitivity | null {
    return this.#swings?.sensitivity ?? null;
  }

  get ties(): readonly BreakEven[] {
    return this.#swings?.ties ?? [];
  }

  get table(): WhatIfTable | null {
    return this.#table;
  }

  get scenarios(): ScenariosAnswer | null {
    return this.#scenarios;
  }

  get summary(): TrialSummary | null {
    return this.#summary;
  }

  /** Null while no trials are being drawn. */
  get progress(): TrialProgress | null {
    return this.#progress;
  }

  /** Somebody stopped the trials; what is shown, if anything, is from before. */
  get isStopped(): boolean {
    return this.#isStopped;
  }

  /** Why the last edit on this page was refused. */
  get refusal(): readonly string[] {
    return this.#refusal;
  }

  /** The result under test: the one chosen, as long as the case has it. */
  readonly result = $derived.by(() => resultInForce(this.#book.whatIfPlace.result, this.#book.session.spread?.capital));

  /** Inputs of the table: those chosen, else the two that move the result most. */
  readonly sides = $derived.by((): { readonly across: string; readonly down: string } | null => {
    const { across, down } = this.#book.whatIfPlace;
    const largest = this.#swings?.sensitivity.judged.map(({ id }) => id) ?? [];
    const first = across !== '' ? across : largest.find((id) => id !== down);
    const second = down !== '' ? down : largest.find((id) => id !== first);
    return first === undefined || second === undefined ? null : { across: first, down: second };
  });

  async refreshSwings(question: Omit<SwingsQuestion, 'ties'>): Promise<void> {
    const answer = await this.#book.session.swings({ ...question, ties: tiesAsked });
    if (answer !== null) this.#swings = answer;
  }

  async refreshTable(question: TableQuestion): Promise<void> {
    const answer = await this.#book.session.table(question);
    if (answer !== null) this.#table = answer.table;
  }

  async refreshScenarios(): Promise<void> {
    const answer = await this.#book.session.scenarios();
    if (answer !== null) this.#scenarios = answer;
  }

  /** Draws the trials; a newer call stops an older one. */
  async drawTrials(result: string = this.result): Promise<void> {
    const { session } = this.#book;
    this.#isStopped = false;
    const mine = { done: 0, of: 0 };
    this.#progress = mine;
    let newest: TrialProgress = mine;
    try {
      const summary = await this.#crew.run({ text: session.text, result }, (done, of) => {
        if (this.#progress === newest) this.#progress = newest = { done, of };
      });
      if (summary !== null) this.#summary = summary;
    } catch (fault) {
      session.tellFault(fault);
    }
    if (this.#progress === newest) this.#progress = null;
  }

  stopTrials(): void {
    this.#crew.stop();
    this.#progress = null;
    this.#isStopped = true;
  }

  /** Carries an edit out and keeps why it was refused, if it was. */
  async edit(work: () => Promise<readonly string[]>): Promise<boolean> {
    this.#refusal = await work();
    return this.#refusal.length === 0;
  }
}

export const [useWhatIfDesk, provideWhatIfDesk] = createContext<WhatIfDesk>();
