import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import type { Case } from '../../src/case/case.ts';
import type { Outcome, Problem } from '../../src/case/problem.ts';
import { readCase } from '../../src/case/read-case.ts';

const projectRoot = join(import.meta.dirname, '../..');

export function textOfFile(path: string): string {
  return readFileSync(join(projectRoot, path), 'utf8');
}

/** A small case that uses every key there is. */
export const sampleText = textOfFile('test/old-cases/version-1.tonne');

/** JSON as loose as a hostile file may be. */
export type Loose = Record<string, unknown>;

/** The sample as plain JSON, free to be spoilt. */
export function sample(): Loose {
  return JSON.parse(sampleText) as Loose;
}

/** What stands at a path such as "routes.0.lines", to be changed in place. */
export function at(content: unknown, path: string): Loose {
  return path.split('.').reduce((value, key) => (value as Loose)[key], content) as Loose;
}

export function problemsOf(outcome: Outcome<Case>): readonly Problem[] {
  return outcome.ok ? [] : outcome.problems;
}

/** All problems of the sample after a change. */
export function problemsAfter(change: (content: Loose) => void): readonly Problem[] {
  const content = sample();
  change(content);
  return problemsOf(readCase(JSON.stringify(content)));
}

export function caseIn(text: string): Case {
  const outcome = readCase(text);
  if (!outcome.ok) throw new Error(`The case has problems: ${JSON.stringify(outcome.problems)}`);
  return outcome.value;
}
