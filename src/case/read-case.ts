import * as v from 'valibot';
import type { Case } from './case.ts';
import { formProblems, quoted } from './form-problems.ts';
import { measureText } from './measure-text.ts';
import { type Outcome, type Problem, outcome } from './problem.ts';
import { findReferenceProblems } from './references.ts';
import { findRepeatedKeys } from './repeated-keys.ts';
import { type CaseFile, caseSchema, formatVersion } from './schema.ts';
import { findShapeProblems } from './shape.ts';
import { findTooManyStages } from './total-stages.ts';

const mostCharacters = 5_000_000;
// A case that gives every figure of twenty routes holds about 30,000 values.
const mostValues = 60_000;
const deepest = 24;
/** Nobody mends more at a sitting, and a list without end would stall whoever shows it. */
const mostProblems = 1000;

/** Reads the text of a case file. Nothing is guessed, and every problem is reported at once (of thousands, the first thousand). */
export function readCase(text: string): Outcome<Case> {
  if (text.length > mostCharacters) return refused({ kind: 'too large', bytes: text.length, most: mostCharacters });
  const { depth, values } = measureText(text);
  if (depth > deepest) return refused({ kind: 'too deep', most: deepest });
  const allowed = `at most ${String(mostValues)} values`;
  if (values > mostValues) return refused({ kind: 'wrong form', path: '', given: `${String(values)} values`, allowed });
  const plain = text.replace(/^\uFEFF/u, '');
  let content: unknown;
  try {
    content = JSON.parse(plain);
  } catch (fault) {
    return refused({ kind: 'not text', detail: fault instanceof Error ? fault.message : '' });
  }
  return notOurs(content) ?? tooGrown(content) ?? checked(content, findRepeatedKeys(plain));
}

/** Another kind of file, or one of a later program, whose details are not for this program to judge. */
function notOurs(content: unknown): Outcome<Case> | null {
  if (!isRecord(content)) return refused({ kind: 'not a case', given: quoted(content) });
  const { format, version } = content;
  if (format !== 'tonne') return refused({ kind: 'not a case', given: quoted(format) });
  if (typeof version !== 'number' || !Number.isInteger(version) || version <= formatVersion) return null;
  return refused({ kind: 'newer version', given: quoted(version), known: formatVersion });
}

function tooGrown(content: unknown): Outcome<Case> | null {
  const [problem] = findTooManyStages(content);
  return problem === undefined ? null : refused(problem);
}

function checked(content: unknown, repeated: readonly Problem[]): Outcome<Case> {
  const result = v.safeParse(caseSchema, content);
  const shape = findShapeProblems(content);
  const broken = new Set(shape.map((problem) => ('path' in problem ? problem.path : '')));
  const form = formProblems(result.issues ?? [], broken);
  const problems = [...repeated, ...shape, ...form, ...findReferenceProblems(content)].slice(0, mostProblems);
  if (!result.success) return outcome({} as Case, problems);
  return outcome(caseOf(result.output), problems);
}

function caseOf({ format: _format, version: _version, ...rest }: CaseFile): Case {
  // Optional keys that are absent stay absent: the schema leaves them out rather than writing undefined.
  return rest as Case;
}

function refused(problem: Problem): Outcome<Case> {
  return { ok: false, problems: [problem] };
}

function isRecord(value: unknown): value is { readonly format?: unknown; readonly version?: unknown } {
  return typeof value === 'object' && value !== null && !Array.isArray(value);
}
