import { scaleLinear, scaleLog } from 'd3-scale';
import type { TrialSummary } from '../../../../src/index.ts';

export interface SettlingLayout {
  /** Mean by trials, and one standard error either way around it. */
  readonly line: string;
  readonly band: string;
  readonly points: readonly { readonly trials: number; readonly x: number; readonly y: number }[];
  readonly across: readonly { readonly x: number; readonly trials: number }[];
  readonly up: readonly { readonly y: number; readonly value: number }[];
  /** Decimals that tell the ticks upwards apart. */
  readonly decimals: number;
}

const labelWidth = 62;

/** Trials by tenfolds across, the mean upwards; null where there are too few stops to draw a line through. */
export function layOutSettling(
  stops: TrialSummary['convergence'],
  size: { readonly left: number; readonly right: number; readonly top: number; readonly bottom: number },
): SettlingLayout | null {
  const known = stops.filter(({ mean, standardError }) => Number.isFinite(mean) && Number.isFinite(standardError));
  const [first, last] = [known[0], known.at(-1)];
  if (first === undefined || last === undefined || known.length < 2) return null;
  const least = Math.min(...known.map(({ mean, standardError }) => mean - standardError));
  const most = Math.max(...known.map(({ mean, standardError }) => mean + standardError));
  // Trials that all come to the same are drawn as a level line in the middle.
  const air = most > least ? (most - least) * 0.06 : Math.max(1, Math.abs(most) * 0.01);
  const x = scaleLog([first.trials, last.trials], [size.left, size.right]);
  const y = scaleLinear([least - air, most + air], [size.bottom, size.top]);
  const at = (trials: number, value: number): string => `${x(trials).toFixed(1)} ${y(value).toFixed(1)}`;
  const upper = known.map(({ trials, mean, standardError }) => at(trials, mean + standardError));
  const lower = known.map(({ trials, mean, standardError }) => at(trials, mean - standardError)).reverse();
  const up = y.ticks(4);
  return {
    line: `M${known.map(({ trials, mean }) => at(trials, mean)).join('L')}`,
    band: `M${[...upper, ...lower].join('L')}Z`,
    points: known.map(({ trials, mean }) => ({ trials, x: x(trials), y: y(mean) })),
    across: labelled(known.map(({ trials }) => ({ trials, x: x(trials) }))),
    up: up.map((value) => ({ value, y: y(value) })),
    decimals: Math.max(0, -Math.floor(Math.log10((up[1] ?? 1) - (up[0] ?? 0)) + 1e-9)),
  };
}

/** From the last stop back, those that leave room for one another's labels. */
function labelled<Stop extends { readonly x: number }>(stops: readonly Stop[]): readonly Stop[] {
  const kept: Stop[] = [];
  for (const stop of [...stops].reverse()) {
    const [next] = kept;
    if (next === undefined || next.x - stop.x >= labelWidth) kept.unshift(stop);
  }
  return kept;
}
