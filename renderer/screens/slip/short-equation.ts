import { upperFirst } from '../../numbers/letter-case.ts';

// A longer sum is read as a list, and the list stands right below it.
const mostTerms = 6;
const operator = /[+\u2212\u00d7\u00f7(]/u;
const letter = /\p{L}/u;

export interface ShortEquation {
  readonly words: string;
  readonly numbers: string;
}

/**
 * An equation as it stands on the slip: the sum of a whole column is named as such rather than written out, and nothing is said
 * twice where words and numbers are the same.
 */
export function shortEquation({ words, numbers }: ShortEquation): ShortEquation {
  const terms = words.split(' + ').length;
  if (terms > mostTerms) return { words: `Sum of ${terms} figures`, numbers: '' };
  return { words: letter.test(words) ? upperFirst(words) : '', numbers: operator.test(numbers) ? numbers : '' };
}
