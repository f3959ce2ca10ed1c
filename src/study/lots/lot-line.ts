import type { Case, Line, Route } from '../../case/case.ts';
import { kindOfLines } from '../../case/route-kind.ts';
import type { OpenCase } from '../open-case.ts';

/** The line that lots are priced for, and the paper it is fed today. */
export interface LotLine {
  readonly route: Route;
  readonly line: Line;
  readonly material: string;
  /** The line that the case names is no longer there. */
  readonly isGone: boolean;
}

/** The line that the case names, else the largest recovered line of the compared route; null where there is none. */
export function lotLine(open: OpenCase): LotLine | null {
  const { content } = open;
  const named = content.lots?.line;
  const route = content.routes.find(({ id }) => id === named?.route);
  const line = route?.lines.find(({ id }) => id === named?.line);
  if (route !== undefined && line !== undefined) return placed(route, line, false);
  const compared = content.routes.find(({ id }) => id === content.compare.with);
  const largest = compared === undefined ? null : largestLine(open, compared, 'recovered');
  return compared === undefined || largest === null ? null : placed(compared, largest, named !== undefined);
}

function placed(route: Route, line: Line, isGone: boolean): LotLine | null {
  const [first] = line.recipe;
  return first === undefined ? null : { route, line, material: first.material, isGone };
}

/** The line of one kind that brings most of the stock; the first of several equals. */
export function largestLine({ content, values }: OpenCase, route: Route, kind: 'virgin' | 'recovered'): Line | null {
  const shareOf = ({ id }: Line): number => values.number(`${route.id}.${id}.share`);
  return route.lines
    .filter((line) => kindOf(content, line) === kind)
    .reduce<Line | null>((best, line) => (best === null || shareOf(line) > shareOf(best) ? line : best), null);
}

function kindOf(content: Case, line: Line): 'virgin' | 'recovered' {
  return kindOfLines([line], content.materials);
}
