import type { LimitReading } from '../../../../../src/index.ts';
import type { Cells } from '../../../waste/cells.ts';

/** Limits as cells: a row for each limit in each route, in the limit's own unit. */
export function limitCells(readings: readonly LimitReading[], readable: (unit: string) => string): Cells {
  return [
    ['limit', '', 'value', 'unit', 'kind', 'from', 'until', 'source', 'route', 'comes to', 'kept'],
    ...readings.map(({ limit, routeLabel, unit, value, kept }) => [
      limit.label,
      limit.sense,
      Number(limit.value),
      readable(unit),
      limit.kind,
      limit.from ?? '',
      limit.until ?? '',
      limit.source ?? '',
      routeLabel,
      Number(value.toPrecision(12)),
      Number.isNaN(value) ? 'not yet' : kept ? 'yes' : 'no',
    ]),
  ];
}
