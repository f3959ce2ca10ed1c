import type {
  Edit,
  LotField,
  Lots,
  LotsView,
  NewCase,
  PriceEcho,
  ReconciledGroup,
  Spread,
  WhatIfTable,
  WorkbookPlan,
} from '../../src/index.ts';
import type { EngineClient } from '../engine/engine-client.ts';
import type { Choices } from '../engine/choices.ts';
import type {
  CaseAnswer,
  CaseState,
  FootprintAnswer,
  LineAnswer,
  MonthsAnswer,
  MachineAnswer,
  PlanAnswer,
  RestsAnswer,
  ScenariosAnswer,
  SwingsAnswer,
  SwingsQuestion,
  TableQuestion,
} from '../engine/messages.ts';
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
  #tablesAsked = 0;
  #plansAsked = 0;
  #lotsAsked = 0;

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
      (after) => this.#labelOf(id, after),
    );
  }

  restore(id: string): Promise<readonly string[]> {
    return this.#edit(
      () => this.#engine.ask('restore', { id }),
      (after) => this.#labelOf(id, after),
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

  /** The case as a workbook, as of now. */
  workbook(): Promise<WorkbookPlan> {
    return this.#engine.ask('workbook', {});
  }

  /** What each input does to a result alone; null when a newer answer is on its way. */
  swings(question: SwingsQuestion): Promise<SwingsAnswer | null> {
    return this.#engine.askNewest('swings', question);
  }

  /** On what a result rests; null when a newer answer is on its way. */
  rests(result: string): Promise<RestsAnswer | null> {
    return this.#engine.askNewest('rests', { result });
  }

  /** A result over two inputs. Null when a newer one has been asked for; a table that is null cannot be spread out. */
  async table(question: TableQuestion): Promise<{ readonly table: WhatIfTable | null } | null> {
    const asked = (this.#tablesAsked += 1);
    const table = await this.#engine.ask('table', question);
    return asked === this.#tablesAsked ? { table } : null;
  }

  /** A result in each of the mill's own months; null when a newer answer is on its way. */
  months(result: string): Promise<MonthsAnswer | null> {
    return this.#engine.askNewest('months', { result });
  }

  /** Scenarios and limits; null when a newer answer is on its way. */
  scenarios(): Promise<ScenariosAnswer | null> {
    return this.#engine.askNewest('scenarios', {});
  }

  /** Gives an input another figure in one scenario; null takes it away. Returns why it was refused, if it was. */
  changeScenario(scenario: string, input: string, typed: string | null, what: string): Promise<readonly string[]> {
    return this.#edit(
      () => this.#engine.ask('changeScenario', { scenario, input, typed }),
      () => what,
    );
  }

  /** The investment plan as of now; undefined when a newer answer is on its way. */
  async plan(): Promise<PlanAnswer | null | undefined> {
    const asked = (this.#plansAsked += 1);
    const answer = await this.#engine.ask('plan', {});
    return asked === this.#plansAsked ? answer : undefined;
  }

  /** Measured figures beside computed ones; null when a newer answer is on its way. */
  reconcile(): Promise<readonly ReconciledGroup[] | null> {
    return this.#engine.askNewest('reconcile', {});
  }

  /** What a price would mean if it were put in force; null where nothing can be said, or a newer answer is on its way. */
  echo(id: string, typed: string): Promise<PriceEcho | null> {
    return this.#engine.askNewest('echo', { id, typed });
  }

  /** What the furnish does to the machine; null when a newer answer is on its way. */
  machine(): Promise<MachineAnswer | null> {
    return this.#engine.askNewest('machine', {});
  }

  startPlan(): Promise<readonly string[]> {
    return this.#edit(
      () => this.#engine.ask('startPlan', {}),
      () => 'Begin an investment plan',
    );
  }

  /** Lots on a day, as the case has them or as they are being typed; undefined when a newer answer is on its way. */
  async lots(today: string, draft: Lots | null): Promise<LotsView | null | undefined> {
    const asked = (this.#lotsAsked += 1);
    const answer = await this.#engine.ask('lots', { today, draft });
    return asked === this.#lotsAsked ? answer : undefined;
  }

  /** Types a figure or readings of a lot. Returns why they were refused, if they were. */
  changeLot(lot: string, field: LotField, typed: string, what: string): Promise<readonly string[]> {
    return this.#edit(
      () => this.#engine.ask('changeLot', { lot, field, typed }),
      () => what,
    );
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

  /** Tells of something the program did wrong. */
  tellFault(fault: unknown): void {
    this.#tell(fault);
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

  #edit(ask: () => Promise<CaseAnswer>, label: (after: Spread) => string): Promise<readonly string[]> {
    return this.#inTurn(async () => {
      const before = this.text;
      const answer = await ask();
      if (answer.kind === 'refused') return answer.sentences;
      if (answer.state.text !== before) this.history.record(before, label(answer.state.spread));
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

  /** An input that exists only once given is not there yet before it is, nor any more after it has been taken back. */
  #labelOf(id: string, after: Spread): string {
    const input = this.spread?.inputs[id] ?? after.inputs[id];
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
