import type { Limit, LimitReading } from '../../../../../src/index.ts';
import type { NumberStyle } from '../../../../numbers/number-style.ts';

/** A limit beside what every route comes to. */
export interface LimitRow {
  readonly limit: Limit;
  /** "at most 8 %". */
  readonly bound: string;
  /** "until 31 Dec 2029"; "" where it holds for ever. */
  readonly days: string;
  /** In the order of the routes; null where a route is not watched. */
  readonly cells: readonly (LimitCell | null)[];
}

export interface LimitCell {
  readonly resultId: string;
  readonly route: string;
  /** "" where it cannot be worked out. */
  readonly value: string;
  readonly kept: boolean;
  /** "0.22 left", "over by 300", "short by 2". */
  readonly room: string;
}

export interface LimitedRoute {
  readonly id: string;
  readonly label: string;
}

/** Every route that some limit watches, in their order. */
export function limitedRoutes(readings: readonly LimitReading[]): readonly LimitedRoute[] {
  return [...new Map(readings.map(({ route, routeLabel }) => [route, { id: route, label: routeLabel }])).values()];
}

/** Limits that some route breaks come first; each group in the order of the case. */
export function limitRows(readings: readonly LimitReading[], numbers: NumberStyle): readonly LimitRow[] {
  const routes = limitedRoutes(readings);
  const rows = [...new Set(readings.map(({ limit }) => limit.id))].flatMap((id) => {
    const own = readings.filter(({ limit }) => limit.id === id);
    const [first] = own;
    if (first === undefined) return [];
    const { limit } = first;
    const unit = numbers.unit(first.unit);
    return [
      {
        limit,
        bound: `${limit.sense} ${numbers.digits(limit.value)}${unit === '' ? '' : `\u00a0${unit}`}`,
        days: daysText(limit, numbers.locale),
        cells: routes.map(({ id: route }) => {
          const reading = own.find((each) => each.route === route);
          return reading === undefined ? null : cellOf(reading, numbers);
        }),
      },
    ];
  });
  const isBroken = ({ cells }: LimitRow): boolean => cells.some((cell) => cell?.kept === false);
  return [...rows.filter(isBroken), ...rows.filter((row) => !isBroken(row))];
}

function cellOf({ limit, route, resultId, value, kept }: LimitReading, numbers: NumberStyle): LimitCell {
  if (Number.isNaN(value)) return { resultId, route, value: '', kept, room: '' };
  const room = limit.sense === 'at most' ? Number(limit.value) - value : value - Number(limit.value);
  const beyond = limit.sense === 'at most' ? 'over by' : 'short by';
  const size = numbers.driver(Math.abs(room));
  return { resultId, route, value: numbers.driver(value), kept, room: kept ? `${size} left` : `${beyond} ${size}` };
}

function daysText({ from, until }: Limit, locale: string): string {
  return [
    from === undefined ? '' : `from ${dayText(from, locale)}`,
    until === undefined ? '' : `until ${dayText(until, locale)}`,
  ]
    .filter((part) => part !== '')
    .join(' ');
}

/** A day of the file, "2029-12-31", as people of a region write it; a day that no calendar has stays as it is. */
function dayText(day: string, locale: string): string {
  const time = Date.parse(`${day}T00:00:00Z`);
  return Number.isNaN(time)
    ? day
    : new Intl.DateTimeFormat(locale, { dateStyle: 'medium', timeZone: 'UTC', numberingSystem: 'latn' }).format(time);
}
