import type { Case, GivenInput } from '../case/case.ts';
import type { Problem } from '../case/problem.ts';
import type { Bounds } from '../kernel/expression/operation.ts';
import { type Quantity, constant } from '../kernel/expression/quantity.ts';
import { GraphBuilder } from '../kernel/graph/graph-builder.ts';
import type { InputDeclaration } from '../kernel/graph/input-declaration.ts';
import { type Entry, givenFigure } from './entry.ts';
import { type Figure, provenanceOf } from './figure.ts';

/** How an input introduces itself. `unit` is what the model reckons in; `entry` what people write, where that differs. */
export interface InputSpec {
  readonly id: string;
  readonly label: string;
  readonly where?: string | undefined;
  readonly unit: string;
  readonly entry?: string;
  readonly figure?: Figure | undefined;
  readonly allowed?: Bounds;
  /** The unit names a currency for itself: it stays as it is, where otherwise EUR stands for the money of the case. */
  readonly foreign?: boolean;
}

/** A figure that may be given, in the unit people write it in; where it belongs to, "" for the whole case. */
export interface FurtherFigure {
  readonly id: string;
  readonly label: string;
  readonly where: string;
  readonly unit: string;
}

/** A share or a fraction of something: cannot be negative nor exceed the whole. */
export const fraction: Bounds = { least: '0', most: '100' };
export const notNegative: Bounds = { least: '0' };
export const positive: Bounds = { above: '0' };

/**
 * Where a model is written down: inputs with the figures of the case or the program's defaults, and named quantities. It notes
 * what is wrong with the figures given, and which of them nobody asked for.
 */
export class Sheet {
  readonly case: Case;
  readonly graph = new GraphBuilder();
  readonly problems: Problem[] = [];
  readonly #asked = new Set<string>();
  readonly #workedOut = new Map<string, { readonly quantity: Quantity; readonly note: string }>();
  readonly #standIns = new Map<string, Quantity>();
  readonly #further = new Map<string, FurtherFigure>();

  constructor(content: Case) {
    this.case = content;
  }

  /** An input that must have a figure; without one, the quantity fails and a problem says so. */
  input(spec: InputSpec): Quantity {
    const instead = this.#workedOut.get(spec.id);
    if (instead !== undefined) return this.#standIn(spec, instead);
    const declaration = this.#declare(spec);
    if (declaration.given === null && declaration.usual.value === null && !this.#mentioned(spec.id)) {
      this.problems.push({ kind: 'no figure', id: spec.id, label: declaration.label, unit: declaration.entryUnit });
    }
    return this.graph.input(declaration, this.#unitOf(spec));
  }

  /** An input that may go without a figure: what is made of it cannot be worked out then, and nobody is told so before it is asked for. */
  awaited(spec: InputSpec): Quantity {
    return this.graph.input(this.#declare(spec), this.#unitOf(spec));
  }

  /** An input that is there only if the program has a default for it or the case gives a figure; otherwise nothing at all. */
  optional(spec: InputSpec): Quantity {
    return this.has(spec) ? this.input(spec) : constant('0', this.#unitOf(spec));
  }

  /** Works out what would otherwise be an input, under the id of that input. A figure that is given for it stands aside. */
  workOut(id: string, quantity: Quantity, note: string): void {
    this.#workedOut.set(id, { quantity, note });
  }

  /** Ids that would be inputs, and are worked out in this case. */
  get workedOut(): ReadonlySet<string> {
    return new Set(this.#workedOut.keys());
  }

  has(spec: InputSpec): boolean {
    const isThere = spec.figure !== undefined || this.isGiven(spec.id);
    if (!isThere) {
      const { id, label, where = '' } = spec;
      this.#further.set(id, { id, label, where, unit: spec.entry ?? this.#unitOf(spec) });
    }
    return isThere;
  }

  isGiven(id: string): boolean {
    return Object.hasOwn(this.case.inputs, id);
  }

  define(
    id: string,
    label: string,
    unit: string,
    quantity: Quantity,
    more: { where?: string | undefined; note?: string; shownIn?: string; foreign?: boolean } = {},
  ): Quantity {
    const { where, foreign, ...rest } = more;
    return this.graph.define(
      {
        id,
        label,
        unit: foreign === true ? unit : this.#money(unit),
        ...rest,
        ...(where === undefined ? {} : { where }),
      },
      quantity,
    );
  }

  constant(digits: string, unit = '1'): Quantity {
    return constant(digits, this.#money(unit));
  }

  /** Figures that the model would take and nobody gave: nothing until they are. */
  further(): readonly FurtherFigure[] {
    return [...this.#further.values()].filter(({ id }) => !this.#asked.has(id));
  }

  /** Ids for which the case gives a figure although the model has no such input. */
  unasked(): readonly string[] {
    return Object.keys(this.case.inputs).filter((id) => !this.#asked.has(id));
  }

  #standIn(spec: InputSpec, { quantity, note }: { readonly quantity: Quantity; readonly note: string }): Quantity {
    this.#asked.add(spec.id);
    const unit = this.#unitOf(spec);
    const entry = spec.entry ?? (spec.figure?.unit === '%' ? '%' : unit);
    const shownIn = entry === unit ? {} : { shownIn: entry };
    const named =
      this.#standIns.get(spec.id) ??
      this.define(spec.id, spec.label, unit, quantity, { where: spec.where, note, foreign: true, ...shownIn });
    this.#standIns.set(spec.id, named);
    return named;
  }

  #mentioned(id: string): boolean {
    return this.problems.some((problem) => 'id' in problem && problem.id === id);
  }

  #declare(spec: InputSpec): InputDeclaration {
    this.#asked.add(spec.id);
    const entryUnit = spec.entry ?? (spec.figure?.unit === '%' ? '%' : this.#unitOf(spec));
    const entry: Entry = { id: spec.id, label: spec.label, unit: entryUnit, allowed: spec.allowed ?? {} };
    const given = Object.hasOwn(this.case.inputs, spec.id) ? this.case.inputs[spec.id] : undefined;
    const found = given === undefined ? null : givenFigure(entry, given);
    if (found !== null && !found.ok) this.problems.push(...found.problems);
    if (given !== undefined) this.problems.push(...factorProblems(spec, given));
    return {
      id: spec.id,
      label: spec.label,
      ...(spec.where === undefined ? {} : { where: spec.where }),
      entryUnit,
      factor: entryUnit === '%' ? '0.01' : '1',
      usual: this.#usual(spec.figure),
      judged: this.#judged(spec.id),
      allowed: spec.allowed ?? {},
      given: found?.ok === true ? found.value : null,
    };
  }

  /** Prices of the program's list are in euro; in a case of another currency they are no default, for no rate is assumed. Nothing is nothing in any. */
  #usual(figure: Figure | undefined): InputDeclaration['usual'] {
    const inEuro = figure !== undefined && /\bEUR\b/u.test(figure.unit) && this.case.currency !== 'EUR';
    if (figure === undefined || (inEuro && Number(figure.value) !== 0)) {
      const source = inEuro ? 'No default in this currency' : 'No default';
      return { value: null, low: null, high: null, provenance: { status: 'none', source } };
    }
    const [low, high] = inEuro ? [null, null] : [figure.low, figure.high];
    return { value: figure.value, low, high, provenance: provenanceOf(figure) };
  }

  #judged(id: string): InputDeclaration['judged'] {
    const { ranges } = this.case;
    const range = ranges !== undefined && Object.hasOwn(ranges, id) ? ranges[id] : undefined;
    return range === undefined
      ? null
      : { low: range.low, high: range.high, source: range.source ?? 'Given without a source' };
  }

  #unitOf({ unit, foreign }: InputSpec): string {
    return foreign === true ? unit : this.#money(unit);
  }

  #money(unit: string): string {
    return unit.replaceAll('EUR', this.case.currency);
  }
}

/** A carbon factor that replaces a default names its source, and takes in what the default takes in. */
function factorProblems({ id, label, figure }: InputSpec, { source, boundary }: GivenInput): readonly Problem[] {
  const wanted = figure?.details?.['boundary'];
  if (wanted === undefined) return [];
  const unsourced: readonly Problem[] =
    source === undefined || source.trim() === '' ? [{ kind: 'no source', id, label }] : [];
  if (boundary === undefined || boundary === wanted) return unsourced;
  return [...unsourced, { kind: 'wrong boundary', id, label, given: boundary, wanted }];
}
