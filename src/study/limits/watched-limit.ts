import type { Case } from '../../case/case.ts';
import type { Limit } from '../../case/what-if.ts';
import { type Graph, nodeNamed } from '../../kernel/graph/graph.ts';
import { entryFactor } from '../../kernel/units/entry-unit.ts';
import { type Unit, multiplyUnits, parseUnit } from '../../kernel/units/unit.ts';
import { withTradeSymbols, worths } from '../../paper/trade-units.ts';

/** A limit as it bears on one route. */
export interface LimitedResult {
  readonly limit: Limit;
  readonly route: string;
  /** Id of the result in that route. */
  readonly id: string;
  readonly unit: Unit;
}

/** The results a limit watches: one for each route that has it. */
export function limitedResults(limit: Limit, content: Case, graph: Graph): readonly LimitedResult[] {
  return content.routes
    .filter(({ id }) => limit.route === undefined || limit.route === id)
    .flatMap(({ id: route }): readonly LimitedResult[] => {
      const id = `${route}.${limit.result}`;
      return graph.positions.has(id) ? [{ limit, route, id, unit: nodeNamed(graph, id).unit }] : [];
    });
}

/** Over what a limit counts, and what its unit is worth in that of the result over the same time. */
export interface LimitPeriod {
  readonly per: 'tonne' | 'year' | 'day';
  readonly factor: number;
  /** The unit of the limit by its symbols. */
  readonly unit: string;
}

const periods = { tonne: '1', year: 't/a', day: 't/d' } as const;

/** What the unit of a limit says of its period; null where it is no unit of that result. */
export function limitPeriod({ unit }: Pick<Limit, 'unit'>, ofResult: Unit): LimitPeriod | null {
  const given = readUnit(unit);
  if (given === null) return null;
  for (const [per, times] of Object.entries(periods)) {
    const factor = entryFactor(given, multiplyUnits(ofResult, parseUnit(times)), worths);
    if (factor !== null) return { per: per as LimitPeriod['per'], factor: Number(factor), unit: given.text };
  }
  return null;
}

function readUnit(text: string): Unit | null {
  try {
    return parseUnit(withTradeSymbols(text));
  } catch {
    return null;
  }
}

/** How many tonnes of product the period of a limit makes. Running days are running hours over 24. */
export function tonnesIn(per: LimitPeriod['per'], tonnesPerYear: number, hoursPerYear: number): number {
  if (per === 'tonne') return 1;
  return per === 'year' ? tonnesPerYear : (tonnesPerYear * 24) / hoursPerYear;
}
