import type { Limit } from '../../case/what-if.ts';
import type { OpenCase } from '../open-case.ts';
import { type LimitPeriod, limitPeriod, limitedResults, tonnesIn } from './watched-limit.ts';

/** A limit as it is held against one result of one route, whatever the figures are. */
export interface WatchedLimit {
  readonly limit: Limit;
  readonly route: string;
  readonly resultId: string;
  readonly per: LimitPeriod['per'];
  /** The unit of the limit by its symbols ("wet-t/a"), however a person spelt it. */
  readonly unit: string;
  /** The result over the period of the limit, in the limit's own unit; `tonnes` and `hours` are those of a year. */
  readonly reading: (result: number, tonnes: number, hours: number) => number;
}

/** Tonnes and running hours of a year: what turns a result per tonne into one per year or per day. */
export const yearIds = ['product.tonnes', 'product.hours'] as const;

/** Every limit of the case in every route it watches. */
export function watchedLimits({ content, model }: OpenCase): readonly WatchedLimit[] {
  return (content.limits ?? []).flatMap((limit) =>
    limitedResults(limit, content, model.graph).flatMap(({ route, id, unit }): readonly WatchedLimit[] => {
      const period = limitPeriod(limit, unit);
      if (period === null) return [];
      const { per, factor, unit: symbols } = period;
      const reading = (result: number, tonnes: number, hours: number): number =>
        (result * tonnesIn(per, tonnes, hours)) / factor;
      return [{ limit, route, resultId: id, per, unit: symbols, reading }];
    }),
  );
}

// 0.07 over 0.01 is 7.000000000000001 in binary fractions: what stands at its limit must not be called a breach of it.
const dust = 1e-9;

/** Whether a limit holds at a reading, its very value included; what is no number keeps nothing. */
export function isKept({ sense, value }: Limit, reading: number): boolean {
  const bound = Number(value);
  const room = Math.abs(bound) * dust;
  return sense === 'at most' ? reading <= bound + room : reading >= bound - room;
}
