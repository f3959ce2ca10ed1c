// The mean letter of a label in Source Sans 3 is a little under half as wide as the letter is high (measured on the labels of the ledger).
const meanLetter = 0.46;
// Indent of a line's name and the gap to the slot beside it, in pixels as the style sets them.
const besideName = 33;

/** About how many letters of a line's name one line of this column holds. */
export function lettersThatFit(columnWidth: number, letterHeight: number): number {
  return Math.max(0, Math.floor((columnWidth - besideName) / (letterHeight * meanLetter)));
}
