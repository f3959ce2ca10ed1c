import type { Problem } from './problem.ts';

/**
 * Stages of all lines of all routes together. Every stage brings five to seven inputs and a balance of every component: so many are
 * worked out in under a second, and twenty routes of forty stages each still have room (measured: test/faults/README.md).
 */
const mostStages = 800;

function partsOf(content: unknown, key: string): readonly unknown[] {
  if (typeof content !== 'object' || content === null || !Object.hasOwn(content, key)) return [];
  const parts: unknown = Reflect.get(content, key);
  return Array.isArray(parts) ? parts : [];
}

/** Says when a case has grown so far that working it out would keep a person waiting. */
export function findTooManyStages(content: unknown): readonly Problem[] {
  const lines = partsOf(content, 'routes').flatMap((route) => partsOf(route, 'lines'));
  const stages = lines.reduce<number>((sum, line) => sum + partsOf(line, 'stages').length, 0);
  if (stages <= mostStages) return [];
  const allowed = `at most ${String(mostStages)} stages in all routes together`;
  return [{ kind: 'wrong form', path: 'routes', given: `${String(stages)} stages`, allowed }];
}
