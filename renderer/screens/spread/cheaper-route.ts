import type { RouteHead, Spread } from '../../../src/index.ts';

/** The route that costs less by the figures shown; null when they are the same or cannot be worked out. */
export function cheaperRoute({ base, with: other, difference }: Spread): RouteHead | null {
  const shown = Number(difference.shownPerTonne || Number.NaN);
  if (shown < 0) return other;
  return shown > 0 ? base : null;
}
