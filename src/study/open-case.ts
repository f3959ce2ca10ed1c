import type { Case, GivenInput } from '../case/case.ts';
import { type Outcome, type Problem, outcome } from '../case/problem.ts';
import { readCase } from '../case/read-case.ts';
import type { InputDeclaration } from '../kernel/graph/input-declaration.ts';
import { catalogueProblems } from '../paper/catalogue-problems.ts';
import { splitTyped } from '../paper/entry.ts';
import { allocationProblems } from '../paper/footprint/allocation-problems.ts';
import { type Model, buildModel } from '../paper/model.ts';
import { replaceFigure } from '../paper/replace-figure.ts';
import { lotProblems } from './lots/lot-problems.ts';
import { keptWhatIf } from './kept-what-if.ts';
import { actualProblems, keptActuals } from './trust/actual-problems.ts';
import { priceGaps, switchProblems } from './machine-gaps.ts';
import { Values } from './values.ts';
import { whatIfProblems } from './what-if-problems.ts';

/** A case with its model and its values: what every study starts from. Never changed; a change gives a new one. */
export interface OpenCase {
  readonly content: Case;
  readonly model: Model;
  readonly values: Values;
  /** Inputs that have no figure yet: what depends on them cannot be worked out. */
  readonly gaps: readonly Problem[];
}

/** Reads a case file and works it out. Figures that are missing do not stop it; figures that are wrong do. */
export function openCase(text: string): Outcome<OpenCase> {
  const read = readCase(text);
  return read.ok ? workOut(read.value) : read;
}

export function workOut(content: Case): Outcome<OpenCase> {
  const strange = catalogueProblems(content);
  return strange.length > 0 ? outcome({} as OpenCase, strange) : withModel(content, buildModel(content));
}

function withModel(content: Case, model: Model): Outcome<OpenCase> {
  const problems = eachOnce([
    ...model.problems,
    ...allocationProblems(content, model.graph.inputs),
    ...switchProblems(model),
    ...whatIfProblems(content, model),
    ...actualProblems(content, model.graph),
    ...lotProblems(content),
  ]);
  const gaps = problems.filter((problem) => problem.kind === 'no figure');
  const faults = problems.filter((problem) => problem.kind !== 'no figure');
  if (faults.length > 0) return outcome({} as OpenCase, faults);
  const values = new Values(model.graph);
  return outcome({ content, model, values, gaps: [...gaps, ...priceGaps(model, values)] }, []);
}

/** An input that several equations ask for is wrong in all of them, and told about once. */
function eachOnce(problems: readonly Problem[]): readonly Problem[] {
  return [...new Map(problems.map((problem) => [JSON.stringify(problem), problem])).values()];
}

/** What is said of a figure beside its number and unit: where it comes from, and the facts of a carbon factor. */
export type Told = Omit<GivenInput, 'value' | 'unit'>;

/** Gives an input a figure as typed: a number, and a unit if one was written ("0.12 EUR/kWh"). The case is worked out anew. */
export function changeInput(open: OpenCase, id: string, typed: string, told: Told = {}): Outcome<OpenCase> {
  const parts = splitTyped(typed);
  // "0,12" and "1.2.3" begin like numbers; what follows is no unit but the rest of one that was written otherwise.
  if (parts === null || /^[.,]/u.test(parts.unit)) return outcome(open, [{ kind: 'not a number', id, given: typed }]);
  if (!canBeKept(parts.digits)) return outcome(open, [tooLong(id, typed)]);
  // An empty unit means the input's own; what is kept is always the input's own unit, by name.
  const asked = withInput(open.content, id, { value: parts.digits, unit: parts.unit, ...told });
  const replaced = replaceFigure(open.model, asked, id);
  const changed = replaced === null ? workOut(asked) : withModel(asked, replaced);
  if (!changed.ok) return changed;
  const input = changed.value.model.graph.inputs.find((each) => each.id === id);
  if (input === undefined) return outcome(open, [{ kind: 'worked out', id }]);
  const kept = keptInput(input, told);
  if (kept !== null && !canBeKept(kept.value)) return outcome(open, [tooLong(id, typed)]);
  return kept === null ? changed : outcome({ ...changed.value, content: withInput(open.content, id, kept) }, []);
}

// What a case file takes: a figure that could not be read back must not be given. Exponents are written out before, up to 40 digits.
const mostCharacters = 120;

function canBeKept(digits: string): boolean {
  return digits.length <= mostCharacters && !/e/iu.test(digits);
}

function tooLong(id: string, given: string): Problem {
  const allowed = `a number of at most ${String(mostCharacters)} characters, not above 1e40 nor closer to 0 than 1e-40`;
  return { kind: 'wrong form', path: id, given, allowed };
}

/**
 * Takes the figure a person gave away again, so that the default is in force. An input that exists only while it is given goes with its
 * figure, and so does what was asked about it.
 */
export function restoreDefault(open: OpenCase, id: string): Outcome<OpenCase> {
  const content = {
    ...open.content,
    inputs: Object.fromEntries(Object.entries(open.content.inputs).filter(([key]) => key !== id)),
  };
  const restored = workOut(content);
  if (restored.ok) return restored;
  const { graph } = buildModel(content);
  return workOut(keptActuals(keptWhatIf(content, graph), graph));
}

function withInput(content: Case, id: string, given: GivenInput): Case {
  return { ...content, inputs: { ...content.inputs, [id]: given } };
}

function keptInput(input: InputDeclaration, told: Told): GivenInput | null {
  return input.given === null ? null : { value: input.given.value, unit: input.entryUnit, ...told };
}
