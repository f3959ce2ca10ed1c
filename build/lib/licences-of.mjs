import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { projectRoot } from './project-root.mjs';

/**
 * Name, version, licence and licence text of installed packages.
 * @param {readonly string[]} names
 * @returns {{ name: string, version: string, licence: string, text: string }[]}
 */
export function licencesOf(names) {
  return names.map((name) => {
    const folder = join(projectRoot, 'node_modules', name);
    const { version, license } = JSON.parse(readFileSync(join(folder, 'package.json'), 'utf8'));
    const file = readdirSync(folder).find((each) => /^licen[cs]e/iu.test(each));
    const text = file === undefined ? '' : readFileSync(join(folder, file), 'utf8').trim();
    return { name, version, licence: String(license), text };
  });
}
