import type { Case } from '../../case/case.ts';
import type { Problem } from '../../case/problem.ts';
import type { Limit } from '../../case/what-if.ts';
import type { Model } from '../../paper/model.ts';
import { nearest } from '../../paper/nearest.ts';
import { limitPeriod, limitedResults } from './watched-limit.ts';

/** Limits on results that no route has, in units that are not those of the result, or whose days run backwards. */
export function limitProblems(content: Case, model: Model): readonly Problem[] {
  return (content.limits ?? []).flatMap((limit, place) => problemsOf(limit, `limits.${String(place)}`, content, model));
}

function problemsOf(limit: Limit, path: string, content: Case, { graph }: Model): readonly Problem[] {
  const routes = content.routes.filter(({ id }) => limit.route === undefined || limit.route === id);
  const results = limitedResults(limit, content, graph);
  if (results.length === 0) {
    const ids = [...graph.positions.keys()];
    const names = routes.flatMap(({ id }) =>
      ids.filter((each) => each.startsWith(`${id}.`)).map((each) => each.slice(id.length + 1)),
    );
    const known = nearest(limit.result, [...new Set(names)]);
    return [{ kind: 'unknown reference', path: `${path}.result`, given: limit.result, what: 'result', known }];
  }
  const wanted = results[0]?.unit;
  const wrongUnit: readonly Problem[] =
    wanted === undefined || limitPeriod(limit, wanted) !== null
      ? []
      : [
          {
            kind: 'wrong form',
            path: `${path}.unit`,
            given: `"${limit.unit}"`,
            allowed: `the unit of the result, ${wanted.text === '1' ? '1 or %' : wanted.text}, or what a year (t/a) or a running day (t/d) makes of it`,
          },
        ];
  const backwards: readonly Problem[] =
    limit.from !== undefined && limit.until !== undefined && limit.from > limit.until
      ? [{ kind: 'wrong form', path: `${path}.until`, given: limit.until, allowed: `no day before ${limit.from}` }]
      : [];
  return [...wrongUnit, ...backwards];
}
