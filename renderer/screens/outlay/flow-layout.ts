import { scaleLinear } from 'd3-scale';
import type { PlanResults } from '../../../src/index.ts';
import { firstMoney } from './plan-sentences.ts';

export interface FlowSize {
  /** Width of one year, the same as of its column in the table. */
  readonly column: number;
  readonly height: number;
}

interface Point {
  readonly x: number;
  readonly y: number;
}

/** Where a running sum crosses nothing for good, and after how many years from the first money. */
export interface Crossing extends Point {
  readonly years: number;
  /** Where its label stands, beside the ring. */
  readonly label: Point & { readonly anchor: 'start' | 'end' };
}

/** The picture of the flows over the columns of their table. */
export interface FlowLayout {
  readonly width: number;
  readonly ground: number;
  readonly ticks: readonly { readonly y: number; readonly value: number }[];
  /** Years before the line runs. */
  readonly building: number;
  readonly bars: readonly {
    readonly year: number;
    readonly x: number;
    readonly y: number;
    readonly width: number;
    readonly height: number;
    readonly isOut: boolean;
  }[];
  readonly sum: readonly Point[];
  readonly discounted: readonly Point[];
  readonly paidBack: Crossing | null;
  readonly discountedBack: Crossing | null;
  /** Heights of the labels of the two sums at their ends. */
  readonly ends: { readonly sum: number; readonly discounted: number };
}

const [above, below] = [22, 12];
const barShare = 0.58;
const labelRoom = 130;
const endRoom = 165;
const lineHeight = 15;

/** Lays the flows out; null where a year cannot be worked out, or there is no room. Figures in one money, `scale` of it to a unit. */
export function layOutFlows(results: PlanResults, scale: number, size: FlowSize): FlowLayout | null {
  const { flows, cumulative, discounted, plan } = results;
  const all = [...flows, ...cumulative, ...discounted].map((value) => value / scale);
  if (!all.every(Number.isFinite) || size.column <= 0 || size.height < above + below + 40) return null;
  const y = scaleLinear([Math.min(0, ...all), Math.max(0, ...all)], [size.height - below, above]);
  const centre = (year: number): number => (year + 0.5) * size.column;
  const width = flows.length * size.column;
  const ground = y(0);
  const bars = flows.map((flow, year) => {
    const top = y(Math.max(0, flow / scale));
    const bottom = y(Math.min(0, flow / scale));
    const bar = size.column * barShare;
    return { year, x: centre(year) - bar / 2, y: top, width: bar, height: bottom - top, isOut: flow < 0 };
  });
  const line = (values: readonly number[]): readonly Point[] =>
    values.map((value, year) => ({ x: centre(year), y: y(value / scale) }));
  const crossing = (years: number | null, isAbove: boolean): Crossing | null => {
    if (years === null || !Number.isFinite(years) || years === 0) return null;
    const x = centre(firstMoney(flows) + years);
    const tallest = Math.min(ground, ...bars.map((bar) => bar.y));
    const [wanted, room] = isAbove ? (['end', x] as const) : (['start', width - x] as const);
    const anchor = room >= labelRoom ? wanted : wanted === 'end' ? 'start' : 'end';
    const label = {
      x: x + (anchor === 'end' ? -6 : 6),
      y: isAbove ? Math.max(lineHeight, tallest - 8) : Math.min(size.height - 3, ground + lineHeight + 8),
      anchor,
    };
    return { x, y: ground, years, label };
  };
  const sum = line(cumulative);
  const present = line(discounted);
  return {
    width,
    ground,
    ticks: y.ticks(Math.max(2, Math.min(8, size.height / 36))).map((value) => ({ y: y(value), value })),
    building: plan.operatesFrom * size.column,
    bars,
    sum,
    discounted: present,
    paidBack: crossing(results.payback, true),
    discountedBack: crossing(results.discountedPayback, false),
    ends: ends(sum, present, width, size.height),
  };
}

/**
 * Labels of the two sums at their ends. The upper one stands above its line; the lower one between the two where there is room, else under
 * its own line. The lines are looked at as far as a label reaches.
 */
function ends(sum: readonly Point[], discounted: readonly Point[], width: number, height: number): FlowLayout['ends'] {
  const isSumUpper = (sum.at(-1)?.y ?? 0) <= (discounted.at(-1)?.y ?? 0);
  const [upper, lower] = isSumUpper ? [sum, discounted] : [discounted, sum];
  const heights = (line: readonly Point[]): readonly number[] =>
    line.filter(({ x }, place) => x > width - endRoom || place === line.length - 1).map(({ y }) => y);
  const over = Math.max(lineHeight - 3, Math.min(...heights(upper)) - 9);
  const between = Math.min(...heights(lower)) - 9;
  const isRoom = between - lineHeight > Math.max(...heights(upper));
  const under = isRoom ? between : Math.min(height - 3, Math.max(...heights(lower)) + lineHeight);
  return isSumUpper ? { sum: over, discounted: under } : { sum: under, discounted: over };
}
