import { openCase, TrialRun, trialPlan, trialSummary, type OpenCase, type TrialPlan } from '../../../src/index.ts';
import type { TrialAnswered, TrialAsked, TrialOrder } from './messages.ts';

/** Longest stretch of work, in milliseconds, between two looks at what else is asked. */
const longestStretch = 20;

export interface TrialSurroundings {
  readonly answer: (answered: TrialAnswered, transfer?: readonly Transferable[]) => void;
  /** Comes back once messages that wait have been taken in. */
  readonly lookUp: () => Promise<void>;
  readonly clock: () => number;
}

/** Draws trials on the worker's side, in stretches short enough to hear at once that it shall stop. */
export class TrialBench {
  readonly #surroundings: TrialSurroundings;
  readonly #running = new Set<number>();
  readonly #stopped = new Set<number>();
  #ready: { readonly order: TrialOrder; readonly open: OpenCase; readonly plan: TrialPlan } | null = null;

  constructor(surroundings: TrialSurroundings) {
    this.#surroundings = surroundings;
  }

  async take(asked: TrialAsked): Promise<void> {
    try {
      await this.#do(asked);
    } catch (fault) {
      const told = fault instanceof Error ? fault.message : String(fault);
      this.#surroundings.answer({ kind: 'fault', ticket: asked.ticket, fault: told });
    }
  }

  async #do(asked: TrialAsked): Promise<void> {
    const { ticket } = asked;
    switch (asked.kind) {
      case 'stop':
        if (this.#running.has(ticket)) this.#stopped.add(ticket);
        return;
      case 'count':
        this.#surroundings.answer({ kind: 'count', ticket, trials: this.#plan(asked.order).uncertainty.trials });
        return;
      case 'run':
        this.#running.add(ticket);
        try {
          await this.#run(ticket, new TrialRun(this.#plan(asked.order), asked.first, asked.count));
        } finally {
          this.#running.delete(ticket);
          this.#stopped.delete(ticket);
        }
        return;
      case 'sum up': {
        const plan = this.#plan(asked.order);
        const { open } = this.#readyFor(asked.order);
        this.#surroundings.answer({ kind: 'summary', ticket, summary: trialSummary(open, plan, asked.segments) });
      }
    }
  }

  async #run(ticket: number, run: TrialRun): Promise<void> {
    const { answer, lookUp } = this.#surroundings;
    while (!run.isDone) {
      this.#workAStretch(run);
      answer({ kind: 'done so far', ticket, trials: run.done });
      await lookUp();
      if (this.#stopped.has(ticket)) {
        answer({ kind: 'stopped', ticket });
        return;
      }
    }
    const { segment } = run;
    answer(
      { kind: 'segment', ticket, segment },
      segment.values.map(({ buffer }) => buffer as ArrayBuffer),
    );
  }

  #workAStretch(run: TrialRun): void {
    const { clock } = this.#surroundings;
    const began = clock();
    do run.step();
    while (!run.isDone && clock() - began < longestStretch);
  }

  #plan(order: TrialOrder): TrialPlan {
    return this.#readyFor(order).plan;
  }

  #readyFor(order: TrialOrder): { readonly open: OpenCase; readonly plan: TrialPlan } {
    if (this.#ready?.order.text === order.text && this.#ready.order.result === order.result) return this.#ready;
    const opened = openCase(order.text);
    if (!opened.ok) throw new Error('Trials were asked of a case that cannot be opened.');
    this.#ready = { order, open: opened.value, plan: trialPlan(opened.value, order.result) };
    return this.#ready;
  }
}
