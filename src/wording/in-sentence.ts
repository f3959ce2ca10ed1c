/** A label as it stands inside a sentence: "Line yield" as "line yield", but "CO2 of fuel" as it is. */
export function inSentence(label: string): string {
  return /^\p{Lu}[\p{Lu}\d]/u.test(label) ? label : label.charAt(0).toLowerCase() + label.slice(1);
}
