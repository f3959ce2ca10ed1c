import type { Case, Line, Route } from '../case.ts';

/** Changes one route of a case; a route that is not there changes nothing. */
export function onRoute(content: Case, routeId: string, change: (route: Route) => Route): Case {
  return { ...content, routes: content.routes.map((route) => (route.id === routeId ? change(route) : route)) };
}

export function onLine(content: Case, routeId: string, lineId: string, change: (line: Line) => Line): Case {
  return onRoute(content, routeId, (route) => ({
    ...route,
    lines: route.lines.map((line) => (line.id === lineId ? change(line) : line)),
  }));
}

export function lineOf(content: Case, routeId: string, lineId: string): Line | undefined {
  return content.routes.find((route) => route.id === routeId)?.lines.find((line) => line.id === lineId);
}
