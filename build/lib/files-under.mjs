import { existsSync, readdirSync } from 'node:fs';
import { join } from 'node:path';

/**
 * All files below a folder, as paths from the root with forward slashes, in order; none if the folder is missing.
 * @param {string} root
 * @param {string} folder
 * @returns {string[]}
 */
export function filesUnder(root, folder) {
  if (!existsSync(join(root, folder))) return [];
  return readdirSync(join(root, folder), { withFileTypes: true, recursive: true })
    .filter((entry) => entry.isFile())
    .map((entry) =>
      join(entry.parentPath, entry.name)
        .slice(root.length + 1)
        .replaceAll('\\', '/'),
    )
    .sort();
}
