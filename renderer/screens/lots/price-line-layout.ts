import { scaleLinear } from 'd3-scale';
import type { PricedLot } from '../../../src/index.ts';

/** Where things stand along a line of prices, 0 to 1. */
export interface PriceLine {
  readonly zones: readonly PriceZone[];
  readonly marks: readonly PriceMark[];
  readonly ticks: readonly { readonly at: number; readonly value: number }[];
}

export interface PriceZone {
  readonly kind: 'cheapest' | 'dearer than another lot' | 'virgin cheaper';
  readonly from: number;
  readonly to: number;
}

export interface PriceMark {
  readonly kind: 'pay no more than' | 'asked' | 'ties with virgin';
  readonly at: number;
  readonly value: number;
}

/** One scale, up to three zones and three marks. Prices that are not known have no mark; where none is known there is no line. */
export function priceLine({ walkAway, asked }: Pick<PricedLot, 'walkAway' | 'asked'>): PriceLine | null {
  const marked = [
    { kind: 'pay no more than', value: walkAway.price },
    { kind: 'asked', value: asked },
    { kind: 'ties with virgin', value: walkAway.virgin },
  ] as const;
  const known = marked.filter(({ value }) => Number.isFinite(value));
  const values = known.map(({ value }) => value);
  if (values.length === 0) return null;
  const [low, high] = [Math.min(...values), Math.max(...values)];
  // A tenth of what is between the marks on either side, and at least ten units of money in all.
  const margin = Math.max((high - low) * 0.12, 5);
  const scale = scaleLinear([low - margin, high + margin], [0, 1]).nice(6);
  const [start = low, end = high] = scale.domain();
  const place = (value: number): number => Math.min(1, Math.max(0, scale(value)));
  const tie = Number.isFinite(walkAway.virgin) ? place(walkAway.virgin) : 1;
  const other = Number.isFinite(walkAway.other) ? place(walkAway.other) : tie;
  const zones: readonly PriceZone[] = [
    { kind: 'cheapest', from: place(start), to: Math.min(other, tie) },
    { kind: 'dearer than another lot', from: Math.min(other, tie), to: tie },
    { kind: 'virgin cheaper', from: tie, to: place(end) },
  ];
  return {
    zones: zones.filter(({ from, to }) => to - from > 1e-9),
    marks: known
      // What ties with virgin and is the limit itself needs one mark only.
      .filter(({ kind, value }) => kind !== 'ties with virgin' || value !== walkAway.price)
      .map(({ kind, value }) => ({ kind, value, at: place(value) })),
    ticks: scale.ticks(6).map((value) => ({ value, at: place(value) })),
  };
}

// The longest label, "pay no more than 1,234.56", with room beside it.
const labelWidth = 190;
const gap = 7;

/**
 * Where the label of a mark stands on a line that is so many pixels long: on the side with room for it, and beyond marks that would run
 * through it.
 */
export function labelPlace(
  mark: PriceMark,
  marks: readonly PriceMark[],
  reach: number,
): { readonly x: number; readonly anchor: 'start' | 'end' } {
  const x = mark.at * reach;
  const others = marks.filter((each) => each !== mark).map(({ at }) => at * reach);
  // What is asked leans to the right of the limit, so that the two are read in their order.
  const leansLeft = mark.kind === 'asked' ? x + labelWidth > reach : x - labelWidth > 0;
  if (leansLeft) {
    const crossed = others.filter((other) => other < x && other > x - labelWidth);
    return { x: Math.min(x, ...crossed) - gap, anchor: 'end' };
  }
  const crossed = others.filter((other) => other > x && other < x + labelWidth);
  return { x: Math.max(x, ...crossed) + gap, anchor: 'start' };
}
