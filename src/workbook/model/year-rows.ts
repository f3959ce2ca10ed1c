import { type Graph, type Node, nodeAt } from '../../kernel/graph/graph.ts';
import { planRows } from '../../paper/investment/investment.ts';

/** One quantity a year: its row of the investment plan. `nodes` by year; undefined in years that have none of it. */
export interface YearRow {
  readonly id: string;
  readonly label: string;
  readonly unit: string;
  readonly nodes: readonly (number | undefined)[];
}

const yearId = /^investment\.(.+)\.(\d+)$/u;

/** The row and the year of a quantity of the plan that is worked out year by year; null for all others. */
export function yearOf(node: Node): { readonly row: string; readonly year: number } | null {
  if (node.operation.op === 'input') return null;
  const [, row, year] = yearId.exec(node.declaration?.id ?? '') ?? [];
  return row === undefined ? null : { row, year: Number(year) };
}

/** The rows of the plan: those that are shown first, in their order, then the others as they come. */
export function yearRows(graph: Graph, years: number): readonly YearRow[] {
  const found = new Map<string, (number | undefined)[]>();
  for (const node of graph.nodes) {
    const place = yearOf(node);
    if (place === null || place.year > years) continue;
    const nodes = found.get(place.row) ?? new Array<number | undefined>(years + 1).fill(undefined);
    nodes[place.year] = node.index;
    found.set(place.row, nodes);
  }
  const order = [...planRows.map(({ id }): string => id), ...found.keys()];
  return [...found]
    .sort(([a], [b]) => order.indexOf(a) - order.indexOf(b))
    .map(([id, nodes]) => {
      const first = nodeAt(graph, nodes.find((each) => each !== undefined) ?? 0);
      const label = (first.declaration?.label ?? id).replace(/, \d{4}$/u, '');
      return { id, label, unit: first.unit.text, nodes };
    });
}
