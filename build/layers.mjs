// Checks every import of the project against the table of directions (build/layers/table.mjs), and refuses circles.
import { readFileSync } from 'node:fs';
import { findBreaches } from './layers/find-breaches.mjs';
import { filesUnder } from './lib/files-under.mjs';
import { projectRoot } from './lib/project-root.mjs';

const paths = ['src', 'electron', 'renderer', 'test']
  .flatMap((folder) => filesUnder(projectRoot, folder))
  .filter((path) => /\.(?:ts|mjs|svelte)$/.test(path));
const breaches = findBreaches(new Map(paths.map((path) => [path, readFileSync(`${projectRoot}/${path}`, 'utf8')])));
for (const breach of breaches) console.error(breach);
if (breaches.length === 0) console.log(`${paths.length} files keep the directions.`);
process.exitCode = breaches.length === 0 ? 0 : 1;
