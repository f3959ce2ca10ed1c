import { type WinningSide, winningSide } from '../tornado/winning-side.ts';

/** Who wins in a cell, and how clearly. */
export interface Tint {
  readonly side: NonNullable<WinningSide>;
  readonly step: 1 | 2 | 3;
}

/** Three steps a side, centred on nothing: thirds of the largest size in the table. Null at nothing and where there is no number. */
export function tintOf(value: number, largest: number, winsBelow: boolean): Tint | null {
  const side = winningSide(value, winsBelow);
  if (side === null) return null;
  const third = Math.ceil((Math.abs(value) / largest) * 3);
  return { side, step: third <= 1 ? 1 : third === 2 ? 2 : 3 };
}

/** The largest size of any cell; nothing where no cell can be worked out. */
export function largestSize(cells: readonly (readonly number[])[]): number {
  return cells.flat().reduce((most, value) => (Number.isFinite(value) ? Math.max(most, Math.abs(value)) : most), 0);
}
