// Heading and total of the ledger, and the least height of a row; a little more than the style's own, so that rows breathe.
const headAndTotal = { normal: 56, wide: 76 };
const rowHeight = { normal: 24, wide: 30 };
const wideFrom = 1700;

/** How many rows of the ledger can be seen at once in a room of this height. */
export function rowsThatFit(room: number, windowWidth: number): number {
  const size = windowWidth >= wideFrom ? 'wide' : 'normal';
  return Math.max(0, Math.floor((room - headAndTotal[size]) / rowHeight[size]));
}
