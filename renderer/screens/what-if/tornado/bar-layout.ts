import type { Swing } from '../../../../src/index.ts';

export interface Span {
  readonly x: number;
  readonly width: number;
}

export interface EndLabel {
  readonly text: string;
  readonly x: number;
  readonly anchor: 'start' | 'end';
}

/** One bar: from today's result to the result at either end of the input. */
export interface Bar {
  readonly id: string;
  readonly y: number;
  readonly height: number;
  readonly isHatched: boolean;
  /** Null where the result cannot be worked out at that end. */
  readonly low: Span | null;
  readonly high: Span | null;
  /** Both ends lie on one side of today: the two halves then stand one above the other, so that neither hides the other. */
  readonly isOneWay: boolean;
  readonly ends: readonly EndLabel[];
  /** What the bar cannot say, on the side that it leaves free; without its words where they find no room. Null where it says all. */
  readonly flag: EndLabel | null;
  readonly swing: string;
}

const gap = 5;
const letterWidth = 5.4;
const flagWidth = 16;

export function layOutBar(
  swing: Swing,
  base: number,
  { y, height }: { readonly y: number; readonly height: number },
  x: (value: number) => number,
  text: { readonly input: (value: number) => string; readonly swing: (value: number) => string },
  plot: { readonly left: number; readonly right: number },
): Bar {
  const today = x(base);
  const span = (value: number): Span | null =>
    Number.isFinite(value) ? { x: Math.min(today, x(value)), width: Math.abs(x(value) - today) } : null;
  const lowText = text.input(swing.low);
  const highText = text.input(swing.high);
  const ends = swing.sameWay
    ? [label(`${lowText}, ${highText}`, farther(base, swing), base, x)]
    : apart(swing, base, x, lowText, highText);
  const words = swing.sameWay ? 'both ends one way' : lacking(swing, lowText, highText);
  return {
    id: swing.id,
    y,
    height,
    isHatched: swing.convention,
    low: span(swing.atLow),
    high: span(swing.atHigh),
    isOneWay: swing.sameWay,
    ends,
    flag: flagOf(words, farther(base, swing) < base, today, plot),
    swing: text.swing(swing.swing),
  };
}

/** The end that moves the result goes to its side; one that leaves it where it is takes the other side. */
function apart(swing: Swing, base: number, x: (value: number) => number, low: string, high: string): EndLabel[] {
  const lowIsLeft = swing.atLow < base || swing.atHigh > base;
  const place = (text: string, value: number, isLeft: boolean): EndLabel[] =>
    Number.isFinite(value) ? [labelAt(text, x(value), isLeft)] : [];
  return [...place(low, swing.atLow, lowIsLeft), ...place(high, swing.atHigh, !lowIsLeft)];
}

/** The end that moves the result most, of those at which it can be worked out. */
function farther(base: number, { atLow, atHigh }: Swing): number {
  if (!Number.isFinite(atLow)) return atHigh;
  return Math.abs(atHigh - base) > Math.abs(atLow - base) ? atHigh : atLow;
}

function lacking({ atLow, atHigh }: Swing, low: string, high: string): string {
  const ends = [Number.isFinite(atLow) ? '' : low, Number.isFinite(atHigh) ? '' : high].filter((end) => end !== '');
  return ends.length === 0 ? '' : `cannot be at ${ends.join(' and ')}`;
}

/** To the right of today where the bar goes left, and the other way round. */
function flagOf(
  words: string,
  isRight: boolean,
  today: number,
  plot: { readonly left: number; readonly right: number },
): EndLabel | null {
  if (words === '') return null;
  const room = isRight ? plot.right - today : today - plot.left;
  const text = words.length * letterWidth + flagWidth + 2 * gap < room ? words : '';
  return { text, x: isRight ? today + 2 * gap : today - 2 * gap, anchor: isRight ? 'start' : 'end' };
}

function label(text: string, value: number, base: number, x: (value: number) => number): EndLabel {
  return labelAt(text, x(value), value < base);
}

function labelAt(text: string, x: number, isLeft: boolean): EndLabel {
  return { text, x: isLeft ? x - gap : x + gap, anchor: isLeft ? 'end' : 'start' };
}
