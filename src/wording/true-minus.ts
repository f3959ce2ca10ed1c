/** Plain digits ("-10") as they are written in a sentence ("−10"): otherwise as they stand, with all of them. */
export function trueMinus(digits: string): string {
  return digits.replace(/-/gu, '\u2212');
}
