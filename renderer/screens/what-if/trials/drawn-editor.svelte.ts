import type { GivenDistribution, Uncertainty } from '../../../../src/index.ts';
import { lowerFirst } from '../../../numbers/letter-case.ts';
import type { CaseSession } from '../../../session/case-session.svelte.ts';
import { atThePlace } from './at-the-place.ts';
import { EditedUncertainty } from './edited-uncertainty.ts';
import type { FigureKey } from './law-figures.ts';

type Change = (before: EditedUncertainty) => EditedUncertainty;

/** Edits what a case says of its uncertainty. Each edit is one step back on the way to undo; one that is refused leaves the case as it is. */
export class DrawnEditor {
  readonly #session: Pick<CaseSession, 'text' | 'rebuild'>;
  #last: Promise<unknown> = Promise.resolve();
  #refusal = $state.raw<readonly string[]>([]);

  constructor(session: Pick<CaseSession, 'text' | 'rebuild'>) {
    this.#session = session;
  }

  /** Null where nobody has said what is uncertain. */
  readonly now = $derived.by(() => EditedUncertainty.of(this.#session.text));

  /** Why the last choice was refused; figures say it at their own slot. */
  get refusal(): readonly string[] {
    return this.#refusal;
  }

  /** Puts what was drawn so far into the case, or takes everything out of it. */
  async write(uncertainty: Uncertainty | null): Promise<void> {
    const what = uncertainty === null ? 'Back to usual ranges' : 'Start from usual ranges';
    this.#refusal = await this.#inTurn(() => this.#put(uncertainty, what));
  }

  async choose(change: Change, what: string): Promise<void> {
    this.#refusal = await this.change(change, what);
  }

  setInput(id: string, label: string, given: GivenDistribution): Promise<void> {
    return this.choose((before) => before.withInput(id, given), spreadOf(label));
  }

  removeInput(id: string, label: string): Promise<void> {
    return this.choose((before) => before.withoutInput(id), spreadOf(label));
  }

  /** Puts a figure of an input in force, or leaves it out where it is "". Returns why it was refused, if it was. */
  setFigure(id: string, label: string, key: FigureKey | 'persistence', digits: string): Promise<readonly string[]> {
    return this.change((before) => {
      const { [key]: _before, ...rest } = before.content.inputs[id] ?? { law: 'fixed' };
      return before.withInput(id, digits === '' ? rest : { ...rest, [key]: digits });
    }, spreadOf(label));
  }

  /** Gives one of the values of a discrete input another value or weight. Returns why it was refused, if it was. */
  setValue(
    id: string,
    label: string,
    place: number,
    change: { readonly value?: string; readonly weight?: string },
  ): Promise<readonly string[]> {
    return this.change(
      (before) =>
        before.withValues(id, (values) => values.map((each, at) => (at === place ? { ...each, ...change } : each))),
      spreadOf(label),
    );
  }

  addValue(id: string, label: string, value: string): Promise<void> {
    return this.choose(
      (before) => before.withValues(id, (values) => [...values, { value, weight: '1' }]),
      spreadOf(label),
    );
  }

  removeValue(id: string, label: string, place: number): Promise<void> {
    return this.choose(
      (before) => before.withValues(id, (values) => values.filter((_, at) => at !== place)),
      spreadOf(label),
    );
  }

  /** Returns why the change was refused, if it was. */
  change(change: Change, what: string): Promise<readonly string[]> {
    return this.#inTurn(() => {
      const before = EditedUncertainty.of(this.#session.text);
      return before === null ? Promise.resolve([]) : this.#put(change(before).content, what);
    });
  }

  async #put(uncertainty: Uncertainty | null, what: string): Promise<readonly string[]> {
    const sentences = await this.#session.rebuild({ kind: 'set uncertainty', uncertainty }, what);
    return sentences.map(atThePlace);
  }

  // A change starts from what the one before has left: a figure still being taken in must not be lost to a choice made right after it.
  #inTurn(work: () => Promise<readonly string[]>): Promise<readonly string[]> {
    const turn = this.#last.then(work);
    this.#last = turn;
    return turn;
  }
}

function spreadOf(label: string): string {
  return `Spread of ${lowerFirst(label)}`;
}
