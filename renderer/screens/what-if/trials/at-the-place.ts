import { upperFirst } from '../../../numbers/letter-case.ts';

const missing = /^"uncertainty\.[^"]*\.(?<key>[a-z]+)" is missing\.$/u;
const place = /^"uncertainty\.[^"]+": /u;

/** A refusal as it is said beside the figure itself: without the place in the file, which only a reader of files needs. */
export function atThePlace(sentence: string): string {
  const key = missing.exec(sentence)?.groups?.['key'];
  return key === undefined ? upperFirst(sentence.replace(place, '')) : `The figure “${key}” is missing.`;
}
