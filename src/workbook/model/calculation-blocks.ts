import type { Case } from '../../case/case.ts';
import { type Graph, nodeAt } from '../../kernel/graph/graph.ts';
import { ownersOf } from './owners.ts';
import { quantityHome } from './quantity-home.ts';
import { yearOf } from './year-rows.ts';

/** A sheet of calculation: nodes of the graph, a row each, block by block. */
export interface CalculationSheet {
  readonly title: string;
  readonly tab: string;
  readonly blocks: readonly { readonly title: string; readonly nodes: readonly number[] }[];
}

export interface Calculation {
  readonly sheets: readonly CalculationSheet[];
  /** Steps that belong to a year of the plan, in working order, and the year. */
  readonly yearSteps: readonly { readonly index: number; readonly year: number; readonly owner: number }[];
  /** Fixed numbers that say a unit. */
  readonly fixed: readonly number[];
  readonly owners: readonly number[];
}

/** Sorts every node that has a cell of its own, but inputs and quantities of a year, into sheets and blocks. */
export function calculationOf(content: Case, graph: Graph, own: ReadonlySet<number>): Calculation {
  const owners = ownersOf(graph);
  const sheets = new Map<string, { title: string; blocks: Map<string, number[]> }>();
  const yearSteps: Calculation['yearSteps'][number][] = [];
  const fixed: number[] = [];
  for (const node of graph.nodes) {
    const { index, operation, declaration } = node;
    if (!own.has(index) || operation.op === 'input' || yearOf(node) !== null) continue;
    if (operation.op === 'constant' && declaration === null) {
      fixed.push(index);
      continue;
    }
    const owner = nodeAt(graph, owners[index] ?? index);
    const year = yearOf(owner);
    if (year !== null) {
      yearSteps.push({ index, year: year.year, owner: owner.index });
      continue;
    }
    const { sheet: title, tab, block } = quantityHome(content, owner.declaration?.id ?? '');
    const { blocks } = sheets.get(tab) ?? { blocks: new Map<string, number[]>() };
    sheets.set(tab, { title, blocks });
    const nodes = blocks.get(block) ?? [];
    blocks.set(block, nodes);
    nodes.push(index);
  }
  return {
    sheets: [...sheets].map(([tab, { title, blocks }]) => ({
      title,
      tab,
      blocks: [...blocks].map(([block, nodes]) => ({ title: block, nodes })),
    })),
    yearSteps,
    fixed,
    owners,
  };
}
