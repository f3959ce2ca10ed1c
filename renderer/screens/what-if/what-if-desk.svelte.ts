import { createContext } from 'svelte';
import type { Sensitivity, BreakEven, TrialSummary, WhatIfTable } from '../../../src/index.ts';
import type {
  MonthsAnswer,
  ScenariosAnswer,
  SwingsAnswer,
  SwingsQuestion,
  TableQuestion,
} from '../../engine/messages.ts';
import type { TrialCrew } from '../../engine/trials/trial-crew.ts';
import type { Book } from '../../session/book.svelte.ts';
import { TrialDrawing, type TrialProgress } from '../../session/trial-drawing.svelte.ts';
import { resultInForce } from '../../session/what-if-place.svelte.ts';

/** How many inputs are asked where the routes tie. */
const tiesAsked = 12;

/** What the page of what-ifs shows, asked anew after every edit; older answers stay on the page until newer ones come. */
export class WhatIfDesk {
  readonly #book: Book;
  readonly #trials: TrialDrawing;
  #swings = $state.raw<SwingsAnswer | null>(null);
  #table = $state.raw<WhatIfTable | null>(null);
  #scenarios = $state.raw<ScenariosAnswer | null>(null);
  #months = $state.raw<MonthsAnswer | null>(null);
  #refusal = $state.raw<readonly string[]>([]);

  constructor(book: Book, crew: Pick<TrialCrew, 'run' | 'stop'>) {
    this.#book = book;
    this.#trials = new TrialDrawing(book.session, crew);
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

  get months(): MonthsAnswer | null {
    return this.#months;
  }

  get scenarios(): ScenariosAnswer | null {
    return this.#scenarios;
  }

  get summary(): TrialSummary | null {
    return this.#trials.summary;
  }

  /** Null while no trials are being drawn. */
  get progress(): TrialProgress | null {
    return this.#trials.progress;
  }

  /** Somebody stopped the trials; what is shown, if anything, is from before. */
  get isStopped(): boolean {
    return this.#trials.isStopped;
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

  async refreshMonths(result: string): Promise<void> {
    const answer = await this.#book.session.months(result);
    if (answer !== null) this.#months = answer;
  }

  async refreshScenarios(): Promise<void> {
    const answer = await this.#book.session.scenarios();
    if (answer !== null) this.#scenarios = answer;
  }

  /** Draws the trials; a newer call stops an older one. */
  drawTrials(result: string = this.result): Promise<void> {
    return this.#trials.draw(result);
  }

  stopTrials(): void {
    this.#trials.stop();
  }

  /** Carries an edit out and keeps why it was refused, if it was. */
  async edit(work: () => Promise<readonly string[]>): Promise<boolean> {
    this.#refusal = await work();
    return this.#refusal.length === 0;
  }
}

export const [useWhatIfDesk, provideWhatIfDesk] = createContext<WhatIfDesk>();
