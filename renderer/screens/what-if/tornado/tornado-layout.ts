import { scaleLinear } from 'd3-scale';
import type { Sensitivity, Swing } from '../../../../src/index.ts';
import { type Bar, layOutBar } from './bar-layout.ts';
import { apartHeight, axisHeight, barsThatFit } from './bars-that-fit.ts';

/** The picture at one size: every place in pixels from its left top corner. */
export interface Tornado {
  readonly bars: readonly Bar[];
  readonly swings: readonly Swing[];
  readonly pitch: number;
  /** Where the names end and the swings begin. */
  readonly left: number;
  readonly right: number;
  readonly bottom: number;
  readonly ticks: readonly { readonly value: number; readonly x: number }[];
  readonly today: number;
  /** Null where nothing lies too far off to share the scale. */
  readonly zero: number | null;
  /** Top of the heading over the bars that stand apart. */
  readonly apart: number | null;
  readonly hidden: number;
}

interface Words {
  readonly input: (value: number) => string;
  readonly swing: (value: number) => string;
}

const nameShare = 0.45;
const mostName = 400;
const swingWidth = 56;
// Figures of the smallest letters are about this wide; an end label must not run out of the plot.
const letterWidth = 6.6;
const tickWidth = 62;
// Nothing is left off the scale where it would squeeze the bars into less than this part of it.
const leastPart = 0.25;

export function layOutTornado(sensitivity: Sensitivity, width: number, height: number, words: Words): Tornado {
  const { base } = sensitivity;
  const fit = barsThatFit(sensitivity, height);
  const swings = [...fit.judged, ...fit.conventional];
  const left = Math.round(Math.min(mostName, width * nameShare));
  const right = width - swingWidth;
  const [least, most] = reached(swings, base);
  const withZero = [Math.min(0, least), Math.max(0, most)] as const;
  const hasZero = most - least >= leastPart * (withZero[1] - withZero[0]);
  const pad = letterWidth * Math.max(...swings.map((each) => labelLength(each, words)), 1) + 8;
  const x = scaleLinear(hasZero ? withZero : [least, most], [left + pad, Math.max(left + pad + 1, right - pad)]);
  const apart = fit.conventional.length === 0 ? null : axisHeight + fit.judged.length * fit.pitch;
  const barHeight = Math.min(22, fit.pitch - 9);
  const bars = swings.map((swing, place) => {
    const top = axisHeight + place * fit.pitch + (swing.convention && apart !== null ? apartHeight : 0);
    return layOutBar(swing, base, { y: top + (fit.pitch - barHeight) / 2, height: barHeight }, x, words, {
      left,
      right,
    });
  });
  const bottom = axisHeight + swings.length * fit.pitch + (apart === null ? 0 : apartHeight);
  return {
    bars,
    swings,
    pitch: fit.pitch,
    left,
    right,
    bottom,
    ticks: x
      .ticks(Math.max(2, Math.floor((right - left - 2 * pad) / tickWidth)))
      .map((value) => ({ value, x: x(value) })),
    today: x(base),
    zero: hasZero ? x(0) : null,
    apart,
    hidden: fit.hidden,
  };
}

function reached(swings: readonly Swing[], base: number): readonly [number, number] {
  const values = [base, ...swings.flatMap(({ atLow, atHigh }) => [atLow, atHigh])].filter(Number.isFinite);
  const [least, most] = [Math.min(...values), Math.max(...values)];
  return least < most ? [least, most] : [least - 1, most + 1];
}

function labelLength({ low, high, sameWay }: Swing, words: Words): number {
  const lengths = [words.input(low).length, words.input(high).length];
  return sameWay ? lengths.reduce((sum, each) => sum + each, 2) : Math.max(...lengths);
}
