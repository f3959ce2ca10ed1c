import type { Limit } from '../../../../../src/index.ts';
import { readEntry, type EntryChoice } from '../../../../fields/read-entry.ts';
import type { NumberStyle } from '../../../../numbers/number-style.ts';
import { newId } from '../new-id.ts';
import type { LimitChoice } from './limit-choices.ts';

/** The choice of a result by its id, for results that are limited seldom. */
export const otherResult = 'another result';

/** A limit while it is being written. Nothing typed is lost when it is refused. */
export class LimitDraft {
  readonly #before: Limit | null;
  readonly #choices: readonly LimitChoice[];
  readonly #numbers: NumberStyle;
  label = $state('');
  choice = $state('');
  resultId = $state('');
  route = $state('');
  sense = $state<Limit['sense']>('at most');
  value = $state('');
  unit = $state('');
  kind = $state<Limit['kind']>('hard');
  source = $state('');
  from = $state('');
  until = $state('');
  #readings = $state.raw<readonly EntryChoice[]>([]);

  constructor(before: Limit | null, choices: readonly LimitChoice[], numbers: NumberStyle) {
    this.#before = before;
    this.#choices = choices;
    this.#numbers = numbers;
    const [first] = choices;
    const result = before?.result ?? first?.result ?? '';
    this.choice = choices.some((each) => each.result === result) ? result : otherResult;
    this.resultId = result;
    this.unit = before?.unit ?? first?.unit ?? '';
    if (before === null) return;
    this.label = before.label;
    this.route = before.route ?? '';
    this.sense = before.sense;
    this.value = numbers.typing(withoutExponent(before.value));
    this.kind = before.kind;
    this.source = before.source ?? '';
    this.from = before.from ?? '';
    this.until = before.until ?? '';
  }

  get isNew(): boolean {
    return this.#before === null;
  }

  /** What the value typed can mean, where it can mean two things. */
  get readings(): readonly EntryChoice[] {
    return this.#readings;
  }

  /** Another result brings the unit it is usually limited in. */
  choose(choice: string): void {
    this.choice = choice;
    const known = this.#choices.find(({ result }) => result === choice);
    if (known === undefined) return;
    this.resultId = known.result;
    this.unit = known.unit;
    this.sense = known.result === 'recycled.content' ? 'at least' : 'at most';
  }

  /** The limit as it would stand in the case, or why it cannot be read. */
  read(taken: readonly string[]): Limit | string {
    this.#readings = [];
    if (this.label.trim() === '') return 'A limit needs a name.';
    if (this.resultId.trim() === '') return 'A limit needs a result to watch.';
    const reading = readEntry(this.value, this.#numbers.decimalMark);
    if (reading.kind === 'either') this.#readings = reading.choices;
    if (reading.kind !== 'read') return reading.sentence;
    return this.#limit(reading.typed, taken);
  }

  /** Settles what the value typed means. */
  settle({ typed }: EntryChoice): void {
    const [digits = '', ...unit] = typed.split(' ');
    this.value = this.#numbers.typing(digits);
    if (unit.length > 0) this.unit = unit.join(' ');
    this.#readings = [];
  }

  #limit(typed: string, taken: readonly string[]): Limit {
    const [value = '', ...written] = typed.split(' ');
    const label = this.label.trim();
    const told = { route: this.route, source: this.source.trim(), from: this.from, until: this.until };
    return {
      id: this.#before?.id ?? newId(label, 'limit', taken),
      label,
      result: this.resultId.trim(),
      sense: this.sense,
      value,
      // A unit behind the value is meant; else the one in its own field is.
      unit: written.length > 0 ? written.join(' ') : this.unit.trim() || '1',
      kind: this.kind,
      ...(Object.fromEntries(Object.entries(told).filter(([, text]) => text !== '')) as Partial<typeof told>),
    };
  }
}

/** Digits as one types them: what a file may write as 8e6 is not read in a field. */
function withoutExponent(digits: string): string {
  if (!/e/iu.test(digits)) return digits;
  return Number(digits).toLocaleString('en', { useGrouping: false, maximumSignificantDigits: 15 });
}
