import type { Actual } from '../../case/actuals.ts';
import { type Graph, nodeNamed } from '../../kernel/graph/graph.ts';
import { accountIdOf } from '../../paper/accounts.ts';
import { limitPeriod, tonnesIn } from '../limits/watched-limit.ts';
import { yearIds } from '../limits/watched-limits.ts';
import type { OpenCase } from '../open-case.ts';
import { waterIdsOf } from '../water-ids.ts';

/** A computed result beside what was measured. Gaps are computed less measured over measured, as a share. */
export interface ReconciledRow {
  readonly result: string;
  readonly label: string;
  readonly where: string;
  /** The unit of the result itself ("bdt/t"), and whether that is already one of a year or of nothing but itself. */
  readonly unit: string;
  readonly computed: number;
  /** What a year makes of it, for results of a tonne; null for all others. */
  readonly yearly: { readonly unit: string; readonly computed: number } | null;
  readonly actual: ComparedActual | null;
}

export interface ComparedActual extends Actual {
  /** The computed figure over the same time and in the same unit as the measured one. */
  readonly computed: number;
  /** The unit by its symbols, however it was spelt. */
  readonly symbols: string;
  /** NaN where nothing was measured or the result cannot be worked out. */
  readonly gap: number;
  readonly isWide: boolean;
}

export interface ReconciledGroup {
  /** A route; null for what belongs to the mill or to a comparison. */
  readonly route: string | null;
  readonly label: string;
  readonly rows: readonly ReconciledRow[];
}

/** Beyond this a gap asks for an explanation. Common practice, no source. */
const wideGap = 0.05;

/**
 * Every measured figure of the case beside its computed one, after the eight that are offered first for each route, the base route
 * before the others. Nothing is fitted: no figure of the case changes by what was measured.
 */
export function reconcile(open: OpenCase): readonly ReconciledGroup[] {
  const { base } = open.content.compare;
  const routes = open.content.routes.toSorted((a, b) => Number(b.id === base) - Number(a.id === base));
  const known = new Set(['product.tonnes']);
  const groups = routes.map((route): ReconciledGroup => {
    const ids = offeredFor(open, route.id);
    const others = measuredUnder(open, route.id).filter((id) => !ids.includes(id));
    for (const id of [...ids, ...others]) known.add(id);
    return { route: route.id, label: route.label, rows: [...ids, ...others].map((id) => rowOf(open, id)) };
  });
  const rest = (open.content.actuals ?? []).map(({ result }) => result).filter((id) => !known.has(id));
  return [
    { route: null, label: 'The mill', rows: ['product.tonnes', ...rest].map((id) => rowOf(open, id)) },
    ...groups,
  ];
}

/** What a mill most likely has on its books for a route; saleable tonnes, the eighth, are the same for all routes. */
function offeredFor({ model }: OpenCase, routeId: string): readonly string[] {
  return [
    `${routeId}.fibreBought`,
    `${routeId}.electricity.total`,
    `${routeId}.heat.total`,
    `${routeId}.rejectsHauled`,
    `${routeId}.sludgeHauled`,
    waterIdsOf(routeId).effluentId,
    accountIdOf(routeId, 'chemicals'),
  ].filter((id) => model.graph.positions.has(id));
}

function measuredUnder({ content }: OpenCase, routeId: string): readonly string[] {
  return (content.actuals ?? []).map(({ result }) => result).filter((id) => id.startsWith(`${routeId}.`));
}

function rowOf(open: OpenCase, result: string): ReconciledRow {
  const { graph } = open.model;
  const { unit } = nodeNamed(graph, result);
  const computed = open.values.number(result);
  const tonnes = open.values.number(yearIds[0]);
  const isPerTonne = unit.exponents.get('t') === -1;
  const actual = (open.content.actuals ?? []).find((each) => each.result === result);
  return {
    result,
    ...namesOf(graph, result),
    unit: unit.text,
    computed,
    yearly: isPerTonne ? { unit: yearUnit(unit.text), computed: computed * tonnes } : null,
    actual: actual === undefined ? null : comparedWith(open, actual, computed),
  };
}

/** "bdt/t" over a year is "bdt/a". */
function yearUnit(perTonne: string): string {
  return perTonne.replace(/\/t$/u, '/a');
}

function comparedWith(open: OpenCase, actual: Actual, perResult: number): ComparedActual | null {
  const period = limitPeriod(actual, nodeNamed(open.model.graph, actual.result).unit);
  if (period === null) return null;
  const [tonnes, hours] = yearIds.map((id) => open.values.number(id));
  const computed = (perResult * tonnesIn(period.per, tonnes ?? NaN, hours ?? NaN)) / period.factor;
  const measured = Number(actual.value);
  const gap = measured === 0 ? NaN : (computed - measured) / Math.abs(measured);
  // 0.05 in binary fractions may come out a hair above itself.
  return { ...actual, computed, symbols: period.unit, gap, isWide: Math.abs(gap) > wideGap * (1 + 1e-9) };
}

function namesOf(graph: Graph, id: string): { readonly label: string; readonly where: string } {
  const input = graph.inputs.find((each) => each.id === id);
  const { declaration } = nodeNamed(graph, id);
  return { label: input?.label ?? declaration?.label ?? id, where: input?.where ?? declaration?.where ?? '' };
}
