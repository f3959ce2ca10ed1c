/** How tightly a piece of a formula holds together; the loosest first. */
const strengths = ['sum', 'product', 'power', 'single'] as const;
type Strength = (typeof strengths)[number];

/** A part of a formula that is under way. */
export interface Piece {
  readonly text: string;
  readonly strength: Strength;
}

export const single = (text: string): Piece => ({ text, strength: 'single' });

/**
 * The text of a piece where its neighbours hold as tightly as `least`: in brackets, if it is looser. Spreadsheets work powers from the left
 * and signs before powers (ECMA-376-1:2016, part 1, 18.17.2.2), so that a power inside a power is bracketed too.
 */
export function within({ text, strength }: Piece, least: Strength): string {
  return strengths.indexOf(strength) < strengths.indexOf(least) ? `(${text})` : text;
}
