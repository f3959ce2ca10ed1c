import type { Edit, NewCase, Spread } from '../../src/index.ts';
import type { EngineClient } from '../engine/engine-client.ts';
import type { Choices } from '../engine/choices.ts';
import type { CaseAnswer, CaseState, FootprintAnswer, LineAnswer } from '../engine/messages.ts';
import { History } from './history.svelte.ts';
import { Working } from './working.svelte.ts';

type Refusal = Extract<CaseAnswer, { kind: 'refused' }>;

/** The case on the screen: its figures, every edit to it, and the working of the figure being explained. */
export class CaseSession {
  readonly history = new History();
  readonly working: Working;
  readonly #engine: Pick<EngineClient, 'ask' | 'askNewest'>;
  #state = $state.raw<CaseState | null>(null);
  #sitting = $state.raw(0);
  #waiting = $state.raw(0);
  #fault = $state.raw<string | null>(null);
  #last: Promise<unknown> = Promise.resolve();

  constructor(engine: Pick<EngineClient, 'ask' | 'askNewest'>) {
    this.#engine = engine;
    this.working = new Working(engine, (fault) => this.#tell(fault));
  }

  get spread(): Spread | null {
    return this.#state?.spread ?? null;
  }

  get text(): string {
    return this.#state?.text ?? '';
  }

  /** Counts the cases opened, so that what belongs to one case is not carried over to the next. */
  get sitting(): number {
    return this.#sitting;
  }

  get isWaiting(): boolean {
    return this.#waiting > 0;
  }

  /** What the program itself did wrong, told as such; null while it does what it should. */
  get fault(): string | null {
    return this.#fault;
  }

  /** Opens another case. When it is refused, the old one stays and the reasons are returned. */
  open(text: string): Promise<readonly string[]> {
    return this.#begin(() => this.#engine.ask('open', { text }));
  }

  /** Starts a case from the program's own lists. */
  start(wanted: NewCase): Promise<readonly string[]> {
    return this.#begin(() => this.#engine.ask('start', wanted));
  }

  /** Types a figure over an input, and where it was read if that is known. Returns why it was refused, if it was. */
  change(id: string, typed: string, source?: string): Promise<readonly string[]> {
    return this.#edit(
      () => this.#engine.ask('change', source === undefined ? { id, typed } : { id, typed, source }),
      () => this.#labelOf(id),
    );
  }

  restore(id: string): Promise<readonly string[]> {
    return this.#edit(
      () => this.#engine.ask('restore', { id }),
      () => this.#labelOf(id),
    );
  }

  /** Changes what there is: stages, lines, grades, routes. `what` says it on the way back: "Remove fine screen". */
  rebuild(edit: Edit, what: string): Promise<readonly string[]> {
    return this.#edit(
      () => this.#engine.ask('structure', { edit }),
      () => what,
    );
  }

  /** The routes of the case and one of their lines, as of now; null when a newer answer is on its way. */
  line(route: string, line: string): Promise<LineAnswer | null> {
    return this.#engine.askNewest('line', { route, line });
  }

  /** Waste, energy and carbon as of now; null when a newer answer is on its way. */
  footprint(): Promise<FootprintAnswer | null> {
    return this.#engine.askNewest('footprint', {});
  }

  choices(): Promise<Choices> {
    return this.#engine.ask('choices', {});
  }

  undo(): Promise<readonly string[]> {
    return this.#travel((now) => this.history.undo(now));
  }

  redo(): Promise<readonly string[]> {
    return this.#travel((now) => this.history.redo(now));
  }

  forgetFault(): void {
    this.#fault = null;
  }

  #begin(ask: () => Promise<CaseAnswer>): Promise<readonly string[]> {
    return this.#inTurn(async () => {
      const answer = await ask();
      if (answer.kind === 'refused') return answer.sentences;
      this.#state = answer.state;
      this.#sitting += 1;
      this.history.clear();
      this.working.putAway();
      return [];
    });
  }

  #edit(ask: () => Promise<CaseAnswer>, label: () => string): Promise<readonly string[]> {
    return this.#inTurn(async () => {
      const before = this.text;
      const answer = await ask();
      if (answer.kind === 'refused') return answer.sentences;
      if (answer.state.text !== before) this.history.record(before, label());
      return this.#show(answer);
    });
  }

  #travel(step: (now: string) => string | null): Promise<readonly string[]> {
    return this.#inTurn(async () => {
      const text = step(this.text);
      return text === null ? [] : this.#show(await this.#engine.ask('open', { text }));
    });
  }

  async #show(answer: CaseAnswer): Promise<Refusal['sentences']> {
    if (answer.kind === 'refused') return answer.sentences;
    this.#state = answer.state;
    await this.working.refresh();
    return [];
  }

  #labelOf(id: string): string {
    const input = this.spread?.inputs[id];
    return input === undefined ? id : [input.label, input.where].filter((part) => part !== '').join(', ');
  }

  // One edit after the other, so that each is recorded against the case it was made on.
  #inTurn(work: () => Promise<readonly string[]>): Promise<readonly string[]> {
    const turn = this.#last.then(async () => {
      this.#waiting += 1;
      try {
        return await work();
      } catch (fault) {
        this.#tell(fault);
        return [];
      } finally {
        this.#waiting -= 1;
      }
    });
    this.#last = turn;
    return turn;
  }

  #tell(fault: unknown): void {
    this.#fault = fault instanceof Error ? fault.message : String(fault);
  }
}
