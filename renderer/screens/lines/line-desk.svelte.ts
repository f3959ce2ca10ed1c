import { createContext } from 'svelte';
import type { Edit, LineBalance, QualityRow, StageBalance, StageChoice, StageOptions } from '../../../src/index.ts';
import type { Choices } from '../../engine/choices.ts';
import type { LineAnswer } from '../../engine/messages.ts';
import type { LineOutline, RouteOutline } from '../../engine/route-outline.ts';
import type { Book } from '../../session/book.svelte.ts';

/** What a stage edit is addressed to. */
interface StageAddress {
  readonly route: string;
  readonly line: string;
  readonly stage: string;
}

/** What the Lines page shows: the line looked at, its balance, and what the last edit did to the cost of its route. */
export class LineDesk {
  readonly #book: Book;
  #answer = $state.raw<LineAnswer | null>(null);
  #choices = $state.raw<Choices>({ stages: [], materials: [], products: [] });
  #change = $state.raw({ route: '', value: 0 });
  #refusal = $state.raw<readonly string[]>([]);

  constructor(book: Book) {
    this.#book = book;
  }

  get routes(): readonly RouteOutline[] {
    return this.#answer?.routes ?? [];
  }

  get choices(): Choices {
    return this.#choices;
  }

  get balance(): LineBalance | null {
    return this.#answer?.balance ?? null;
  }

  get quality(): readonly QualityRow[] {
    return this.#answer?.quality ?? [];
  }

  get route(): RouteOutline | null {
    return this.routes.find(({ id }) => id === this.#book.linePlace.route) ?? null;
  }

  get line(): LineOutline | null {
    return this.route?.lines.find(({ id }) => id === this.#book.linePlace.line) ?? null;
  }

  /** The stage looked at, counted from nought. */
  get place(): number {
    const found = this.balance?.stages.findIndex(({ stage }) => stage === this.#book.linePlace.stage) ?? 0;
    return Math.max(found, 0);
  }

  get stage(): StageBalance | null {
    return this.balance?.stages[this.place] ?? null;
  }

  /** How the stage looked at is set up in the case. */
  get setUp(): LineOutline['stages'][number] | null {
    return this.line?.stages[this.place] ?? null;
  }

  /** What the last edit added to the cost of a tonne by this route. */
  get change(): number {
    return this.#change.route === this.#book.linePlace.route ? this.#change.value : 0;
  }

  get refusal(): readonly string[] {
    return this.#refusal;
  }

  async start(): Promise<void> {
    this.#choices = await this.#book.session.choices();
  }

  /** Asks for what is looked at, after an edit or when another line is chosen. */
  async refresh(): Promise<void> {
    const { session, linePlace } = this.#book;
    const answer = await session.line(linePlace.route, linePlace.line);
    if (answer === null) return;
    const hasMoved = linePlace.settle(answer.routes);
    if (hasMoved) {
      await this.refresh();
      return;
    }
    this.#noteChange(this.routes, answer.routes);
    this.#answer = answer;
  }

  goTo(stage: string): void {
    this.#book.linePlace.goToStage(stage);
  }

  addStage(choice: StageChoice, label: string): Promise<void> {
    const { route, line } = this.#address();
    const at = this.place + 1;
    const edit: Edit = { kind: 'add stage', route, line, like: choice.like, at };
    return this.rebuild(edit, `Add ${label}`, `Added as stage ${String(at + 1)}: ${label}.`, at);
  }

  removeStage(): Promise<void> {
    const name = this.stage?.label ?? '';
    const next = Math.max(this.place - 1, 0);
    return this.rebuild({ kind: 'remove stage', ...this.#address() }, `Remove ${name}`, `Removed: ${name}.`, next);
  }

  duplicateStage(): Promise<void> {
    const name = this.stage?.label ?? '';
    const edit: Edit = { kind: 'duplicate stage', ...this.#address() };
    return this.rebuild(edit, `Duplicate ${name}`, `${name} is there twice now.`, this.place + 1);
  }

  moveStage(by: -1 | 1): Promise<void> {
    const to = this.place + by;
    if (to < 0 || to >= (this.balance?.stages.length ?? 0)) return Promise.resolve();
    const name = this.stage?.label ?? '';
    const edit: Edit = { kind: 'move stage', ...this.#address(), to };
    return this.rebuild(edit, `Move ${name}`, `${name} is stage ${String(to + 1)} now.`, to);
  }

  setUpStage(options: StageOptions, what: string): Promise<void> {
    return this.rebuild({ kind: 'set up stage', ...this.#address(), options }, what, `${what}: done.`, this.place);
  }

  /** Makes an edit of the structure. `stage` is the place that is looked at afterwards, where that is to change. */
  async rebuild(edit: Edit, what: string, said: string, stage?: number): Promise<void> {
    const { session, announcer } = this.#book;
    this.#refusal = await session.rebuild(edit, what);
    if (this.#refusal.length > 0) {
      announcer.say(this.#refusal.join(' '));
      return;
    }
    await this.refresh();
    const found = stage === undefined ? undefined : this.line?.stages[stage];
    if (found !== undefined) this.goTo(found.id);
    announcer.say(said);
  }

  #address(): StageAddress {
    const { route, line, stage } = this.#book.linePlace;
    return { route, line, stage };
  }

  #noteChange(before: readonly RouteOutline[], now: readonly RouteOutline[]): void {
    const costIn = (routes: readonly RouteOutline[], route: string): number =>
      routes.find(({ id }) => id === route)?.cost.value ?? Number.NaN;
    const hasMoved = now.some(({ id, cost }) => costIn(before, id) !== cost.value);
    const { route } = this.#book.linePlace;
    if (before.length > 0 && hasMoved) this.#change = { route, value: costIn(now, route) - costIn(before, route) };
  }
}

export const [useLineDesk, provideLineDesk] = createContext<LineDesk>();
