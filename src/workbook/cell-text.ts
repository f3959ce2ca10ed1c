/** As many characters as a cell holds; a spreadsheet calls a file with more damaged (ECMA-376 leaves it open, all programs agree). */
const mostCharacters = 32_767;

/**
 * A text cell is stored as text, so a leading "=" is shown and never reckoned. Control characters, halves of pairs and non-characters
 * are not XML. "_x0041_" would be read as "A" (ECMA-376, ST_Xstring): its underscore is written in the same way.
 */
export function cellText(text: string): string {
  return text
    .slice(0, mostCharacters)
    .replace(/[\u0000-\u0008\u000B\u000C\u000E-\u001F\uFFFE\uFFFF]|\p{Cs}/gu, '\uFFFD')
    .replace(/_(?=x[0-9A-F]{4}_)/giu, '_x005F_');
}
