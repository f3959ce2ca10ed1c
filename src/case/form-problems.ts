import * as v from 'valibot';
import type { Problem } from './problem.ts';

/** What the schema calls its kinds of value, in words. */
const kinds: ReadonlyMap<string, string> = new Map([
  ['string', 'text in quotation marks'],
  ['number', 'a number'],
  ['boolean', 'true or false'],
  ['Array', 'a list in square brackets'],
  ['Object', 'a group of named values in braces'],
]);

/**
 * What the schema found, as problems. Left out are keys that it does not know, because it names only the first of them, and what lies at
 * or below the paths about which everything `isSaid`: in a list that stands for a group it would find the methods of lists.
 */
export function formProblems(issues: readonly v.BaseIssue<unknown>[], isSaid: ReadonlySet<string>): Problem[] {
  return issues.flatMap((issue): Problem[] => {
    if (issue.type === 'strict_object' && issue.expected === 'never') return [];
    const path = v.getDotPath(issue) ?? '';
    if (isUnder(path, isSaid)) return [];
    if (issue.input === undefined) return [{ kind: 'missing', path }];
    return [{ kind: 'wrong form', path, given: quoted(issue.input), allowed: allowedBy(issue) }];
  });
}

function isUnder(path: string, paths: ReadonlySet<string>): boolean {
  if (paths.size === 0) return false;
  const parts = path.split('.');
  return parts.some((_, place) => paths.has(parts.slice(0, place + 1).join('.')));
}

function allowedBy(issue: v.BaseIssue<unknown>): string {
  if (!issue.message.startsWith('Invalid')) return issue.message;
  if (issue.type === 'max_length') return `at most ${String(issue.requirement)} ${countedBy(issue.input)}`;
  if (issue.type === 'min_length') return 'at least one character';
  const expected = issue.expected ?? '';
  return (
    kinds.get(expected) ??
    expected
      .replaceAll('"', '')
      .replaceAll(' | ', ', ')
      .replace(/^\((.*)\)$/u, '$1')
  );
}

function countedBy(value: unknown): string {
  return Array.isArray(value) ? 'entries' : 'characters';
}

/** A value as it stands in the file, cut to a length that fits into a sentence. */
export function quoted(value: unknown): string {
  if (value === undefined) return 'nothing';
  const text = typeof value === 'number' ? String(value) : JSON.stringify(value);
  return text.length > 80 ? `${text.slice(0, 77).replace(/\p{Cs}$/u, '')}...` : text;
}
