import type { Case } from '../../case/case.ts';
import { withActuals } from '../../case/edits/trust-edits.ts';
import type { Problem } from '../../case/problem.ts';
import { type Graph, nodeNamed } from '../../kernel/graph/graph.ts';
import { nearest } from '../../paper/nearest.ts';
import { limitPeriod } from '../limits/watched-limit.ts';

/** Measured figures of results that the case does not have, or in units that are not those of the result. */
export function actualProblems({ actuals = [] }: Case, graph: Graph): readonly Problem[] {
  return actuals.flatMap(({ result, unit }, place): readonly Problem[] => {
    const path = `actuals.${String(place)}`;
    if (!graph.positions.has(result)) {
      const known = nearest(result, [...graph.positions.keys()]);
      return [{ kind: 'unknown reference', path: `${path}.result`, given: result, what: 'result', known }];
    }
    const { unit: wanted } = nodeNamed(graph, result);
    if (limitPeriod({ unit }, wanted) !== null) return [];
    const allowed = `the unit of the result, ${wanted.text === '1' ? '1 or %' : wanted.text}, or what a year (t/a) or a running day (t/d) makes of it`;
    return [{ kind: 'wrong form', path: `${path}.unit`, given: `"${unit}"`, allowed }];
  });
}

/** The case without measured figures of results that it no longer has. */
export function keptActuals(content: Case, graph: Graph): Case {
  const { actuals } = content;
  return actuals === undefined
    ? content
    : withActuals(
        content,
        actuals.filter(({ result }) => graph.positions.has(result)),
      );
}
