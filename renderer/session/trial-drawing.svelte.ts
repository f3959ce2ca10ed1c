import type { TrialSummary } from '../../src/index.ts';
import type { TrialCrew } from '../engine/trials/trial-crew.ts';
import type { CaseSession } from './case-session.svelte.ts';

/** How far trials have come: how many of how many. */
export interface TrialProgress {
  readonly done: number;
  readonly of: number;
}

/** Trials that are being drawn for a page, and what the last ones said. A newer drawing stops an older one. */
export class TrialDrawing {
  readonly #session: Pick<CaseSession, 'text' | 'tellFault'>;
  readonly #crew: Pick<TrialCrew, 'run' | 'stop'>;
  #summary = $state.raw<TrialSummary | null>(null);
  #progress = $state.raw<TrialProgress | null>(null);
  #isStopped = $state.raw(false);

  constructor(session: Pick<CaseSession, 'text' | 'tellFault'>, crew: Pick<TrialCrew, 'run' | 'stop'>) {
    this.#session = session;
    this.#crew = crew;
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

  async draw(result: string): Promise<void> {
    this.#isStopped = false;
    let newest: TrialProgress = { done: 0, of: 0 };
    this.#progress = newest;
    try {
      const summary = await this.#crew.run({ text: this.#session.text, result }, (done, of) => {
        if (this.#progress === newest) this.#progress = newest = { done, of };
      });
      if (summary !== null) this.#summary = summary;
    } catch (fault) {
      this.#session.tellFault(fault);
    }
    if (this.#progress === newest) this.#progress = null;
  }

  stop(): void {
    this.#crew.stop();
    this.#progress = null;
    this.#isStopped = true;
  }

  forget(): void {
    this.#crew.stop();
    this.#summary = null;
    this.#progress = null;
    this.#isStopped = false;
  }
}
