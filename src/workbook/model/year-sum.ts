import { type Graph, nodeAt } from '../../kernel/graph/graph.ts';
import { type YearRow, yearOf } from './year-rows.ts';

/**
 * The rows that a row of the plan is the sum of, the same for all its years: a row that has nothing in a year counts as nothing there. Null
 * where any year is worked out otherwise.
 */
export function summedRows(graph: Graph, row: YearRow, rows: readonly YearRow[]): readonly YearRow[] | null {
  const found = new Set<string>();
  let most = 0;
  for (const [year, index] of row.nodes.entries()) {
    const terms = index === undefined ? null : termsOf(graph, index, year, true);
    if (terms === null) return null;
    for (const term of terms) found.add(term);
    most = Math.max(most, terms.length);
  }
  return most < 2 ? null : rows.filter(({ id }) => found.has(id));
}

/** Ids of the rows that a quantity adds up, all of one year; null where it is anything but such a sum. */
function termsOf(graph: Graph, index: number, year: number, isRoot: boolean): readonly string[] | null {
  const node = nodeAt(graph, index);
  const place = isRoot ? null : yearOf(node);
  if (place !== null) return place.year === year ? [place.row] : null;
  if (node.declaration !== null && !isRoot) return null;
  const { operation } = node;
  if (operation.op === 'constant') return operation.digits === '0' ? [] : null;
  if (!['sum', 'same', 'later'].includes(operation.op)) return null;
  const terms = node.args.map((arg) => termsOf(graph, arg, year, false));
  return terms.some((each) => each === null) ? null : terms.flatMap((each) => each ?? []);
}
