import { type Graph, nodeAt } from '../../kernel/graph/graph.ts';
import { yearOf } from './year-rows.ts';

/**
 * Where each unnamed step of the plan stands: the row of the plan that it is a part of, and the way there through what is made of it. Steps
 * of different years that stand at the same place have the same role. `owners` gives the quantity that each node belongs to.
 */
export function yearRoles(graph: Graph, owners: readonly number[]): ReadonlyMap<number, string> {
  const roles = new Map<number, string>();
  for (const { index: owner, declaration } of graph.nodes) {
    const row = declaration === null ? undefined : yearOf(nodeAt(graph, owner))?.row;
    if (row === undefined) continue;
    const waiting: (readonly [index: number, way: string])[] = [[owner, row]];
    for (let next = waiting.shift(); next !== undefined; next = waiting.shift()) {
      const [index, way] = next;
      nodeAt(graph, index).args.forEach((arg, place) => {
        const isOwn = owners[arg] === owner && nodeAt(graph, arg).declaration === null;
        if (!isOwn || roles.has(arg)) return;
        const role = `${way} ${String(place)}`;
        roles.set(arg, role);
        waiting.push([arg, role]);
      });
    }
  }
  return roles;
}

/** Steps that have no cell of their own while those of the same role in two other years have: given one, each year reads like the others. */
export function missingSteps(
  graph: Graph,
  own: ReadonlySet<number>,
  roles: ReadonlyMap<number, string>,
): readonly number[] {
  const counts = new Map<string, number>();
  for (const [index, role] of roles) if (own.has(index)) counts.set(role, (counts.get(role) ?? 0) + 1);
  return [...roles].flatMap(([index, role]) => {
    const isStep = !['constant', 'later', 'same'].includes(nodeAt(graph, index).operation.op);
    return isStep && !own.has(index) && (counts.get(role) ?? 0) >= 2 ? [index] : [];
  });
}
