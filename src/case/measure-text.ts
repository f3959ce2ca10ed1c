/** How large a text is as JSON: its deepest nesting, and how many values it can hold at most. */
export interface TextMeasure {
  readonly depth: number;
  readonly values: number;
}

/** Looks at brackets and commas outside strings before the text is parsed, so that a hostile file cannot exhaust stack or memory. */
export function measureText(text: string): TextMeasure {
  let depth = 0;
  let deepest = 0;
  let values = 1;
  for (let at = 0; at < text.length; at += 1) {
    const character = text[at];
    if (character === '"') at = stringEnd(text, at);
    else if (character === '{' || character === '[') deepest = Math.max(deepest, (depth += 1));
    else if (character === '}' || character === ']') depth -= 1;
    else if (character === ',') values += 1;
  }
  return { depth: deepest, values };
}

/** Place of the quotation mark that ends the string begun at `start`; the end of the text where none does. */
export function stringEnd(text: string, start: number): number {
  let at = start + 1;
  while (at < text.length && text[at] !== '"') at += text[at] === '\\' ? 2 : 1;
  return at;
}
