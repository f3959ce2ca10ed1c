import * as v from 'valibot';
import type { Case } from './case.ts';
import { type Outcome, type Problem, outcome } from './problem.ts';
import { findReferenceProblems } from './references.ts';
import { caseSchema, formatVersion } from './schema.ts';

const mostBytes = 5_000_000;
const deepest = 24;
const dangerousKeys = new Set(['__proto__', 'constructor', 'prototype']);

/** Reads the text of a case file. Nothing is guessed, and every problem is reported at once. */
export function readCase(text: string): Outcome<Case> {
  if (text.length > mostBytes) return refused({ kind: 'too large', bytes: text.length, most: mostBytes });
  if (depthOf(text) > deepest) return refused({ kind: 'too deep', most: deepest });
  let content: unknown;
  try {
    content = JSON.parse(text.replace(/^\uFEFF/u, ''));
  } catch (fault) {
    return refused({ kind: 'not text', detail: fault instanceof Error ? fault.message : '' });
  }
  return checked(content);
}

function checked(content: unknown): Outcome<Case> {
  if (!isRecord(content) || content['format'] !== 'tonne')
    return refused({ kind: 'not a case', given: isRecord(content) ? quoted(content['format']) : quoted(content) });
  const version = content['version'];
  if (typeof version !== 'number' || version > formatVersion)
    return refused({ kind: 'newer version', given: quoted(version), known: formatVersion });
  const dangerous = dangerousPaths(content, '');
  const result = v.safeParse(caseSchema, content);
  const problems: Problem[] = dangerous.map((path) => ({ kind: 'unknown key', path }));
  if (!result.success)
    problems.push(
      ...result.issues.map(problemOf).filter((problem) => !dangerous.includes('path' in problem ? problem.path : '')),
    );
  if (!result.success || problems.length > 0) return outcome({} as Case, problems);
  const found = caseOf(result.output);
  return outcome(found, findReferenceProblems(found));
}

function caseOf({ format: _format, version: _version, ...rest }: v.InferOutput<typeof caseSchema>): Case {
  // Optional keys that are absent stay absent: the schema leaves them out rather than writing undefined.
  return rest as Case;
}

function refused(problem: Problem): Outcome<Case> {
  return { ok: false, problems: [problem] };
}

function problemOf(issue: v.BaseIssue<unknown>): Problem {
  const path = v.getDotPath(issue) ?? '';
  const key = issue.path?.at(-1);
  if (issue.type === 'strict_object' && issue.expected === 'never') return { kind: 'unknown key', path };
  if (issue.input === undefined && key !== undefined) return { kind: 'missing', path };
  return { kind: 'wrong form', path, given: quoted(issue.input), allowed: allowedBy(issue) };
}

function allowedBy(issue: v.BaseIssue<unknown>): string {
  if (issue.type === 'regex' || issue.type === 'min_length')
    return issue.message.startsWith('Invalid') ? `${issue.expected ?? 'more'} characters` : issue.message;
  if (issue.type === 'max_length') return `at most ${String(issue.expected ?? '').replace('<=', '')} long`;
  return (issue.expected ?? 'something else')
    .replaceAll('"', '')
    .replaceAll(' | ', ', ')
    .replace(/^\((.*)\)$/u, '$1');
}

function quoted(value: unknown): string {
  const text = value === undefined ? 'nothing' : JSON.stringify(value);
  return text.length > 80 ? `${text.slice(0, 77)}...` : text;
}

function isRecord(value: unknown): value is Record<string, unknown> {
  return typeof value === 'object' && value !== null && !Array.isArray(value);
}

function dangerousPaths(value: unknown, path: string): string[] {
  if (typeof value !== 'object' || value === null) return [];
  return Object.entries(value).flatMap(([key, inner]) => {
    const here = path === '' ? key : `${path}.${key}`;
    return dangerousKeys.has(key) ? [here] : dangerousPaths(inner, here);
  });
}

/** Nesting of brackets outside strings: looked at before the text is parsed, so that a hostile file cannot exhaust the stack. */
function depthOf(text: string): number {
  let depth = 0;
  let most = 0;
  let inString = false;
  for (let at = 0; at < text.length; at += 1) {
    const character = text[at];
    if (character === '\\' && inString) at += 1;
    else if (character === '"') inString = !inString;
    else if (!inString && (character === '{' || character === '[')) most = Math.max(most, (depth += 1));
    else if (!inString && (character === '}' || character === ']')) depth -= 1;
  }
  return most;
}
