import { describe, expect, it } from 'vitest';
import { at, problemsAfter, sample } from './sample-case.ts';

/** The sample with copies of its first stage, so many that all routes together have this many. */
function problemsWith(stages: number) {
  const routes = at(sample(), 'routes') as unknown as { lines: { stages: unknown[] }[] }[];
  const now = routes.flatMap(({ lines }) => lines).reduce((sum, line) => sum + line.stages.length, 0);
  return problemsAfter((content) => {
    const lines = at(content, 'routes.0') as unknown as { lines: { id: string; stages: { id: string }[] }[] };
    const first = lines.lines[0]!;
    let left = stages - now;
    for (let place = 0; left > 0; place += 1) {
      const count = Math.min(60, left);
      const copies = Array.from({ length: count }, (_, copy) => ({ ...first.stages[0]!, id: `s${String(copy)}` }));
      lines.lines.push({ ...first, id: `l${String(place)}`, stages: copies });
      left -= count;
    }
  });
}

describe('the number of stages in a case', () => {
  it('may be 800 in all routes together', () => {
    expect(problemsWith(800)).toEqual([]);
  });

  it('may not be more, and the refusal tells both numbers', () => {
    expect(problemsWith(801)).toEqual([
      {
        kind: 'wrong form',
        path: 'routes',
        given: '801 stages',
        allowed: 'at most 800 stages in all routes together',
      },
    ]);
  });
});
