import { resolve } from 'node:path';

/** The case named on a command line, as an absolute path. The last one wins; switches and the program itself are passed over. */
export function caseOfArguments(given: readonly string[], workingFolder: string): string | null {
  const named = given.findLast((word) => !word.startsWith('-') && word.toLowerCase().endsWith('.tonne'));
  return named === undefined ? null : resolve(workingFolder, named);
}
