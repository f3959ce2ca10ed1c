import type { Swing } from '../../../../src/index.ts';

/** What must be said of a swing beside its figures; "" where nothing must. */
export function swingNote(swing: Swing, isUsualMethod: boolean): string {
  const parts = [
    // The extremes then lie between the ends: neither end says how far the answer moves.
    swing.sameWay ? 'both ends move it one way' : '',
    swing.convention ? 'no usual range is known' : '',
    Number.isFinite(swing.atLow) ? '' : 'cannot be at its low end',
    Number.isFinite(swing.atHigh) ? '' : 'cannot be at its high end',
    isUsualMethod && (swing.figure < swing.low || swing.figure > swing.high) ? 'today lies outside the range' : '',
    swing.flips && !swing.convention ? 'could turn the answer' : '',
  ];
  return parts.filter((part) => part !== '').join('; ');
}
