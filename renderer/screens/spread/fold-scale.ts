import { scaleLinear } from 'd3-scale';
import type { SpreadGroup } from '../../../src/index.ts';

/** Length of a fold bar in per cent of its half, by the difference it shows. */
export type FoldScale = (difference: number) => number;

// The longest bar leaves the edge of the fold free.
const longest = 90;

/** One scale for all bars of the ledger, group and line alike, so that their lengths can be compared. */
export function foldScale(groups: readonly SpreadGroup[]): FoldScale {
  const amounts = groups.flatMap(({ difference, rows }) => [difference, ...rows.map((row) => row.difference)]);
  const sizes = amounts.map(({ perTonne }) => Math.abs(perTonne)).filter((size) => !Number.isNaN(size));
  const scale = scaleLinear([0, Math.max(...sizes, Number.MIN_VALUE)], [0, longest]);
  return (difference) => (Number.isNaN(difference) ? 0 : scale(Math.abs(difference)));
}
