/** A label inside a sentence: "Pulp price" as "pulp price"; names in capitals such as "COD" stay. */
export function lowerFirst(label: string): string {
  return /^\p{Lu}\p{Ll}/u.test(label) ? label.charAt(0).toLowerCase() + label.slice(1) : label;
}

/** Words at the head of a line: "dry feed" as "Dry feed". */
export function upperFirst(words: string): string {
  return words.charAt(0).toUpperCase() + words.slice(1);
}
