import { createContext } from 'svelte';
import { npvId, type InvestmentPlan, type PlanResults, type Swing, type TrialSummary } from '../../../src/index.ts';
import type { PlanAnswer } from '../../engine/messages.ts';
import type { TrialCrew } from '../../engine/trials/trial-crew.ts';
import type { Book } from '../../session/book.svelte.ts';
import { TrialDrawing, type TrialProgress } from '../../session/trial-drawing.svelte.ts';
import { planScale } from './plan-scale.ts';

/** What the page of the plan shows, asked anew after every edit; older answers stay on the page until newer ones come. */
export class OutlayDesk {
  readonly #book: Book;
  readonly #trials: TrialDrawing;
  #answer = $state.raw<PlanAnswer | null | undefined>(undefined);
  #refusal = $state.raw<readonly string[]>([]);
  /** Whether values of single years stand under their years in place of the picture. */
  givesYears = $state.raw(false);
  /** Ways of residues that somebody asked to give shares of years for, by their stems. */
  askedWays = $state.raw<readonly string[]>([]);

  constructor(book: Book, crew: Pick<TrialCrew, 'run' | 'stop'>) {
    this.#book = book;
    this.#trials = new TrialDrawing(book.session, crew);
  }

  /** Null where the case has no plan; undefined until that is known. */
  get results(): PlanResults | null | undefined {
    return this.#answer === undefined ? undefined : (this.#answer?.results ?? null);
  }

  /** What inputs do to the present value, largest first. */
  get swings(): readonly Swing[] {
    return this.#answer?.swings ?? [];
  }

  get summary(): TrialSummary | null {
    return this.#trials.summary;
  }

  /** Share of trials that end above nothing; null where none were drawn, or nothing that could differ. */
  get aboveNothing(): number | null {
    const { summary } = this.#trials;
    return summary === null || summary.drawn.length === 0 ? null : 1 - summary.belowNothing.share;
  }

  get progress(): TrialProgress | null {
    return this.#trials.progress;
  }

  get isStopped(): boolean {
    return this.#trials.isStopped;
  }

  /** Why the last change of the plan was refused. */
  get refusal(): readonly string[] {
    return this.#refusal;
  }

  readonly scale = $derived.by(() => planScale(this.results ?? { flows: [], cumulative: [] }));

  async refresh(): Promise<void> {
    const answer = await this.#book.session.plan();
    if (answer === undefined) return;
    this.#answer = answer;
    if (answer === null) this.#forgetTrials();
    else await this.drawTrials();
  }

  /** Draws the trials; a newer call stops an older one. */
  async drawTrials(): Promise<void> {
    const { session } = this.#book;
    // An edit that is under way may have changed the answer before it changes the text; trials of a text without a plan would fail.
    if (!hasPlan(session.text)) return;
    await this.#trials.draw(npvId);
  }

  stopTrials(): void {
    this.#trials.stop();
  }

  async start(): Promise<void> {
    this.#refusal = await this.#book.session.startPlan();
  }

  /** Changes what there is in the plan; `what` says it on the way back: "Remove Bale yard". True when it was done. */
  async change(edit: (plan: InvestmentPlan) => InvestmentPlan | null, what: string): Promise<boolean> {
    if (this.results === null || this.results === undefined) return false;
    this.#refusal = await this.#book.session.rebuild({ kind: 'set investment', plan: edit(this.results.plan) }, what);
    return this.#refusal.length === 0;
  }

  #forgetTrials(): void {
    this.#trials.forget();
    this.givesYears = false;
    this.askedWays = [];
  }
}

/** Whether a case, by its text, has a plan. */
export function hasPlan(text: string): boolean {
  return text !== '' && (JSON.parse(text) as { readonly investment?: unknown }).investment !== undefined;
}

export const [useOutlayDesk, provideOutlayDesk] = createContext<OutlayDesk>();
