import type { Sensitivity, Swing } from '../../../../src/index.ts';

/** The bars there is room for, and how high a row becomes. */
export interface FittingBars {
  readonly judged: readonly Swing[];
  readonly conventional: readonly Swing[];
  readonly pitch: number;
  readonly hidden: number;
}

/** Height of the axis above the bars, and of the heading above those that stand apart. */
export const axisHeight = 18;
export const apartHeight = 19;
// A name is pressed to set its range: targets are at least 24 pixels high.
const leastPitch = 24;
const mostPitch = 36;
const mostApart = 3;

/** The largest swings first; those kept apart get up to a quarter of the rows, and more where there are few others. */
export function barsThatFit(
  { judged, conventional }: Pick<Sensitivity, 'judged' | 'conventional'>,
  height: number,
): FittingBars {
  const free = height - axisHeight - (conventional.length > 0 ? apartHeight : 0);
  const rows = Math.max(1, Math.floor(free / leastPitch));
  const least = conventional.length === 0 ? 0 : Math.min(mostApart, Math.max(1, Math.floor(rows / 4)));
  const shown = judged.slice(0, Math.max(1, rows - Math.min(least, conventional.length)));
  const apart = conventional.slice(0, Math.max(0, rows - shown.length));
  const count = Math.max(1, shown.length + apart.length);
  return {
    judged: shown,
    conventional: apart,
    pitch: Math.min(mostPitch, Math.max(leastPitch, free / count)),
    hidden: judged.length + conventional.length - shown.length - apart.length,
  };
}
