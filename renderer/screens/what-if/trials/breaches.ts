import type { Spread, TrialSummary } from '../../../../src/index.ts';
import { routeWords } from '../tornado/result-words.ts';
import { chanceOf100 } from './chance-of-100.ts';

export interface BreachRow {
  readonly key: string;
  readonly label: string;
  readonly route: string;
  /** "12 of 100", "none". */
  readonly often: string;
}

/** How often each limit is broken in the trials, most often first. */
export function breachRows({ breaches }: TrialSummary, spread: Spread): readonly BreachRow[] {
  const { base, other } = routeWords(spread);
  const names: Readonly<Record<string, string>> = { [spread.base.id]: base, [spread.with.id]: other };
  return breaches
    .toSorted((one, next) => next.share - one.share)
    .map(({ limit, route, share }) => ({
      key: `${limit.id} ${route}`,
      label: limit.label,
      route: names[route] ?? route,
      often: share === 0 ? 'none' : chanceOf100(share),
    }));
}

const most = 2;

/** The limits broken most often, in a line; "" where there is none to keep. */
export function breachLine(summary: TrialSummary, spread: Spread): string {
  const rows = breachRows(summary, spread);
  if (rows.length === 0) return '';
  const broken = rows.filter(({ often }) => often !== 'none');
  if (broken.length === 0) return 'No limit is broken in any trial.';
  const named = broken.slice(0, most).map(({ label, route, often }) => `${label} (${route}) in ${often}`);
  const more = broken.length - named.length;
  return `Limits broken: ${named.join('; ')}${more > 0 ? `; ${String(more)} more` : ''}.`;
}
