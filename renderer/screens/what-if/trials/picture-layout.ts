import { scaleLinear } from 'd3-scale';
import type { TrialSummary } from '../../../../src/index.ts';
import { type WinningSide, winningSide } from '../tornado/winning-side.ts';

/** Which route wins. */
export type Side = NonNullable<WinningSide>;

export interface PictureSize {
  readonly width: number;
  readonly height: number;
  /** Room for the percentiles above and the axis below. */
  readonly above: number;
  readonly below: number;
}

export interface PictureLayout {
  readonly ground: number;
  readonly bars: readonly {
    readonly key: number;
    readonly x: number;
    readonly width: number;
    readonly top: number;
    readonly side: Side;
  }[];
  /** The share of trials up to each figure, as a line; and what lies under it, by side. */
  readonly curve: string;
  readonly areas: readonly { readonly side: Side; readonly path: string }[];
  /** Where nothing stands; null where it lies beyond the picture. */
  readonly zero: number | null;
  readonly zeroLies: 'within' | 'to the left' | 'to the right';
  readonly ticks: readonly { readonly x: number; readonly value: number }[];
  /** `place` is where its label stands: over its line where there is room. `level` is the height of the curve there. */
  readonly marks: readonly {
    readonly name: string;
    readonly value: number;
    readonly x: number;
    readonly place: number;
    readonly percent: number;
    readonly level: number;
  }[];
}

const labelWidth = 74;
const tickWidth = 64;
// Nothing belongs on the picture as long as it takes no more than this share of what the trials take.
const emptyShare = 0.4;

/**
 * Lays the trials out as bars and as a running share; null where none could be worked out. `winsBelow` says whether the route compared wins
 * below nothing.
 */
export function layOutPicture(
  { histogram, results }: TrialSummary,
  size: PictureSize,
  winsBelow: boolean,
): PictureLayout | null {
  const { from, width, counts } = histogram;
  const total = counts.reduce((sum, count) => sum + count, 0);
  const [, p10, p50, p90] = results[0]?.percentiles ?? [];
  if (total === 0 || p10 === undefined || p50 === undefined || p90 === undefined) return null;
  const to = from + width * counts.length;
  const ground = size.height - size.below;
  const x = scaleLinear(domainOf(from, to), [0, size.width]);
  const y = scaleLinear([0, Math.max(...counts)], [ground, size.above]);
  const isWithin = (value: number): boolean => value >= Number(x.domain()[0]) && value <= Number(x.domain()[1]);
  const steps = runningShares(counts, total).map((share, edge) => ({ value: from + edge * width, share }));
  const share = scaleLinear([0, 1], [ground, size.above]);
  const point = (step: (typeof steps)[number]): string => `${round(x(step.value))} ${round(share(step.share))}`;
  const isZero = (value: number): boolean => Math.abs(value) < width / 2;
  return {
    ground,
    bars: counts.map((count, bin) => ({
      key: bin,
      x: x(from + bin * width),
      width: Math.max(1, x(width) - x(0) - 1),
      top: y(count),
      side: from + (bin + 0.5) * width < 0 === winsBelow ? 'with' : 'base',
    })),
    curve: `M${steps.map(point).join('L')}`,
    areas: (winsBelow ? (['with', 'base'] as const) : (['base', 'with'] as const)).flatMap((side) => {
      const under = steps.filter(({ value }) => isZero(value) || winningSide(value, winsBelow) === side);
      const [first, last] = [under[0], under.at(-1)];
      if (first === undefined || last === undefined || under.length < 2) return [];
      const path = `M${round(x(first.value))} ${round(ground)}L${under.map(point).join('L')}V${round(ground)}Z`;
      return [{ side, path }];
    }),
    zero: isWithin(0) ? x(0) : null,
    zeroLies: isWithin(0) ? 'within' : from > 0 ? 'to the left' : 'to the right',
    ticks: x.ticks(Math.max(3, Math.min(8, size.width / tickWidth))).map((value) => ({ x: x(value), value })),
    marks: placed(
      [
        { name: 'P10', percent: 10, value: p10, x: x(p10), level: share(0.1) },
        { name: 'P50', percent: 50, value: p50, x: x(p50), level: share(0.5) },
        { name: 'P90', percent: 90, value: p90, x: x(p90), level: share(0.9) },
      ],
      size.width,
    ),
  };
}

function domainOf(from: number, to: number): [number, number] {
  const room = (to - from) * emptyShare;
  if (from > 0 && from <= room) return [0, to];
  return to < 0 && -to <= room ? [from, 0] : [from, to];
}

/** Share of the trials below each edge, from none to all. */
function runningShares(counts: readonly number[], total: number): readonly number[] {
  let below = 0;
  return [0, ...counts.map((count) => (below += count) / total)];
}

type Mark = Omit<PictureLayout['marks'][number], 'place'>;

/** The middle label stands over its line as near as the edges let it; the outer ones are pushed outwards where they would touch it. */
function placed(marks: readonly [Mark, Mark, Mark], width: number): PictureLayout['marks'] {
  const [low, middle, high] = marks;
  const centre = Math.min(Math.max(middle.x, labelWidth * 1.5), width - labelWidth * 1.5);
  const left = Math.max(labelWidth / 2, Math.min(low.x, centre - labelWidth));
  const right = Math.min(width - labelWidth / 2, Math.max(high.x, centre + labelWidth));
  return [
    { ...low, place: left },
    { ...middle, place: centre },
    { ...high, place: right },
  ];
}

// Tenths of a pixel are as fine as anyone sees.
function round(value: number): string {
  return value.toFixed(1);
}
