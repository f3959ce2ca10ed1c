import { readdirSync, statSync } from 'node:fs';
import { join } from 'node:path';

/**
 * The latest change below a path, in milliseconds; 0 if it is missing. Folders count too, since a deleted file changes only its folder.
 * @param {string} path
 * @returns {number}
 */
export function newestTime(path) {
  const found = statSync(path, { throwIfNoEntry: false });
  if (found === undefined) return 0;
  if (!found.isDirectory()) return found.mtimeMs;
  return readdirSync(path).reduce((newest, name) => Math.max(newest, newestTime(join(path, name))), found.mtimeMs);
}
