import type { Case } from '../../case/case.ts';
import { type Graph, nodeAt } from '../../kernel/graph/graph.ts';
import { ownCells, worthSharing } from '../formulas/own-cells.ts';
import { ownersOf } from './owners.ts';
import { quantityHome } from './quantity-home.ts';
import { missingSteps, yearRoles } from './year-roles.ts';
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
  /** Where each step of the plan stands in what is made of it. */
  readonly roles: ReadonlyMap<number, string>;
}

/** What more years than its own and the next read belongs to no year: what a sum of money grows by, for instance. */
const mostYears = 2;

/** Sorts every node that has a cell of its own, but inputs and quantities of a year, into sheets and blocks. */
export function calculationOf(content: Case, graph: Graph): Calculation {
  const owners = ownersOf(graph);
  const yearAt = (index: number): number | null => yearOf(nodeAt(graph, owners[index] ?? index))?.year ?? null;
  // Steps of the plan are set apart however short, so that each year reads like the one before it.
  const apart = ownCells(graph, (index) => (yearAt(index) === null ? worthSharing : 1));
  const roles = yearRoles(graph, owners);
  const own = new Set([...apart, ...missingSteps(graph, apart, roles)]);
  const users = yearsOfUsers(graph, yearAt);
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
    const year = yearAt(index);
    if (year !== null && (users[index]?.size ?? 0) <= mostYears) {
      yearSteps.push({ index, year, owner: owner.index });
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
    roles,
  };
}

/** For each node the years of the plan in which it is read. */
function yearsOfUsers(
  { nodes }: Graph,
  yearAt: (index: number) => number | null,
): readonly (ReadonlySet<number> | undefined)[] {
  const users = new Array<Set<number> | undefined>(nodes.length).fill(undefined);
  for (const { index, args } of nodes) {
    const year = yearAt(index);
    if (year === null) continue;
    for (const arg of args) users[arg] = (users[arg] ?? new Set()).add(year);
  }
  return users;
}
