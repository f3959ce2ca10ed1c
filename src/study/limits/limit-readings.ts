import type { Limit } from '../../case/what-if.ts';
import type { OpenCase } from '../open-case.ts';
import { isKept, watchedLimits, yearIds } from './watched-limits.ts';

/** A limit beside what a route comes to, both in the limit's own unit. */
export interface LimitReading {
  readonly limit: Limit;
  readonly route: string;
  readonly routeLabel: string;
  readonly resultId: string;
  readonly per: 'tonne' | 'year' | 'day';
  /** The unit of the limit by its symbols ("wet-t/a"), however a person spelt it. */
  readonly unit: string;
  /** NaN where it cannot be worked out. */
  readonly value: number;
  readonly kept: boolean;
}

/** Every limit of the case in every route it watches, in the order of the case; at the figures in force, or at what `numberOf` says. */
export function limitReadings(
  open: OpenCase,
  numberOf: (id: string) => number = (id) => open.values.number(id),
): readonly LimitReading[] {
  const [tonnes, hours] = yearIds.map(numberOf);
  const labels = new Map(open.content.routes.map(({ id, label }) => [id, label]));
  return watchedLimits(open).map(({ limit, route, resultId, per, unit, reading }) => {
    const value = reading(numberOf(resultId), tonnes ?? NaN, hours ?? NaN);
    return {
      limit,
      route,
      routeLabel: labels.get(route) ?? route,
      resultId,
      per,
      unit,
      value,
      kept: isKept(limit, value),
    };
  });
}
