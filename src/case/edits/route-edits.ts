import type { Case, Route } from '../case.ts';
import { withInputsCopied, withoutInputsOf } from './given-inputs.ts';
import { copyLabel, freshId, idsOf, inserted, moved } from './lists.ts';
import { onRoute } from './parts.ts';
import { withoutPairsOf } from './trust-edits.ts';

export function duplicateRoute(content: Case, routeId: string): Case {
  const original = content.routes.find((route) => route.id === routeId);
  if (original === undefined) return content;
  const id = freshId(routeId, idsOf(content.routes));
  const copy = { ...original, id, label: copyLabel(original.label) };
  const routes = inserted(content.routes, content.routes.indexOf(original) + 1, copy);
  return { ...content, routes, inputs: withInputsCopied(content.inputs, routeId, id) };
}

/** Two routes stay, or there would be nothing to compare. */
export function removeRoute(content: Case, routeId: string): Case {
  const routes = content.routes.filter((route) => route.id !== routeId);
  const [first, second] = routes;
  if (first === undefined || second === undefined || routes.length === content.routes.length) return content;
  const { base, with: other } = content.compare;
  const left = routes.some((route) => route.id === base)
    ? base
    : (routes.find((route) => route.id !== other)?.id ?? first.id);
  const right = routes.some((route) => route.id === other)
    ? other
    : (routes.find((route) => route.id !== left)?.id ?? second.id);
  const { limits, investment, ...rest } = withoutPairsOf(content, routeId);
  // A plan goes with either of its routes.
  const isPlanned = investment !== undefined && investment.from !== routeId && investment.to !== routeId;
  const kept = (limits ?? []).filter((limit) => limit.route !== routeId);
  return {
    ...rest,
    ...(kept.length === 0 ? {} : { limits: kept }),
    ...(isPlanned ? { investment } : {}),
    routes,
    compare: { base: left, with: right },
    inputs: withoutInputsOf(content.inputs, routeId),
  };
}

export function renameRoute(content: Case, routeId: string, label: string): Case {
  return onRoute(content, routeId, (route) => ({
    ...route,
    label: label.trim() === '' ? route.label : label.trim().slice(0, 200),
  }));
}

/** "As given" is what holds where nothing is said, and is not written down. */
export function setService(content: Case, routeId: string, service: NonNullable<Route['service']>): Case {
  return onRoute(content, routeId, ({ service: _before, ...route }) =>
    service === 'as given' ? route : { ...route, service },
  );
}

export function moveRoute(content: Case, routeId: string, to: number): Case {
  return { ...content, routes: moved(content.routes, routeId, to) };
}

/** The two that face each other must be two. */
export function compareRoutes(content: Case, base: string, other: string): Case {
  const known = idsOf(content.routes);
  return base !== other && known.includes(base) && known.includes(other)
    ? { ...content, compare: { base, with: other } }
    : content;
}
