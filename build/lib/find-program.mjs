import { accessSync, constants } from 'node:fs';
import { delimiter, join } from 'node:path';

/**
 * The first of these programs that is on the search path.
 * @param {readonly string[]} names
 * @returns {string | undefined} its full path
 */
export function findProgram(names) {
  const folders = (process.env['PATH'] ?? '').split(delimiter).filter((folder) => folder !== '');
  for (const name of names) {
    const found = folders.map((folder) => join(folder, name)).find(isExecutable);
    if (found !== undefined) return found;
  }
  return undefined;
}

/** @param {string} path */
function isExecutable(path) {
  try {
    accessSync(path, constants.X_OK);
    return true;
  } catch {
    return false;
  }
}
