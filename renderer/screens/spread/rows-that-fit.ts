// Heading and total of the ledger, and the least height of a row, in pixels as the style sets them.
const headAndTotal = { normal: 50, wide: 68 };
const rowHeight = { normal: 23, wide: 29 };
/** From this width on, letters and rows are larger: the same figure as in the styles. */
export const wideFrom = 1700;

/** How many rows of the ledger can be seen at once in a room of this height. */
export function rowsThatFit(room: number, windowWidth: number): number {
  const size = windowWidth >= wideFrom ? 'wide' : 'normal';
  return Math.max(0, Math.floor((room - headAndTotal[size]) / rowHeight[size]));
}
