import type { Case, Line, Route } from '../../case/case.ts';
import { accounts } from '../../paper/accounts.ts';

/** Where a quantity is worked out: the heading of a sheet, what is written on its tab, and the heading of the block within it. */
export interface QuantityHome {
  readonly sheet: string;
  /** Made of ids, which are short and differ, where labels are cut at 31 characters. */
  readonly tab: string;
  readonly block: string;
}

/**
 * The home of a quantity by its id, whatever quantities there are: a sheet for what all routes share, one for each route, one for each of
 * its lines, with a block for each stage, and one for its costs, with a block for each account.
 */
export function quantityHome(content: Case, id: string): QuantityHome {
  const [first = '', second = '', third = ''] = id.split('.');
  if (first === 'difference') return { sheet: 'Difference', tab: 'Calc difference', block: costBlock(second, third) };
  if (first === 'investment') return { sheet: 'Plan', tab: 'Calc plan', block: 'Plan' };
  const route = content.routes.find((each) => each.id === first);
  if (route === undefined) return { sheet: 'Common', tab: 'Calc common', block: sharedBlock(content, first, second) };
  const line = route.lines.find((each) => each.id === second);
  const tab = `Calc ${first}`;
  if (line !== undefined)
    return { sheet: `${route.label}, ${line.label}`, tab: `${tab} ${second}`, block: lineBlock(line, third) };
  if (isCost(second)) return { sheet: `${route.label}, costs`, tab: `${tab} costs`, block: costBlock(second, third) };
  return { sheet: route.label, tab, block: routeBlock(route, second, third) };
}

const isCost = (word: string): boolean => word === 'cost' || word === 'costPerYear';

function costBlock(kind: string, account: string): string {
  if (!isCost(kind)) return spelled(kind);
  return accounts.find(({ id }) => id === account)?.label ?? 'Sums';
}

function lineBlock({ label, stages }: Line, part: string): string {
  const place = stages.findIndex(({ id }) => id === part);
  const stage = stages[place];
  return stage === undefined ? `${label}: the line as a whole` : `${label}: ${stage.label ?? spelled(stage.id)}`;
}

function routeBlock({ label }: Route, part: string, stream: string): string {
  return part === 'residue'
    ? `${label}: residue, ${spelled(stream).toLowerCase()}`
    : `${label}: ${spelled(part).toLowerCase()}`;
}

function sharedBlock({ materials }: Case, kind: string, id: string): string {
  const material = kind === 'material' ? materials.find((each) => each.id === id) : undefined;
  return material === undefined ? spelled(kind) : `Material: ${material.label}`;
}

/** "wetEndLoss" and "fine-screen" as "Wet end loss" and "Fine screen". */
function spelled(id: string): string {
  const words = id
    .replace(/([a-z])([A-Z])/gu, '$1 $2')
    .replace(/-/gu, ' ')
    .toLowerCase();
  return `${words.slice(0, 1).toUpperCase()}${words.slice(1)}`;
}
