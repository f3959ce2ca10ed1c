// Writes renderer/frame/licences.json: the licences of what the window carries, as the packages bring them. Run it after a package has
// changed; a test compares.
import { writeFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { format } from 'prettier';
import { licencesOf } from './lib/licences-of.mjs';
import { projectRoot } from './lib/project-root.mjs';

/**
 * The packages whose code or fonts lie in the window or in the main process. Electron brings Chromium and Node with their own list
 * (LICENSES.chromium.html beside the program).
 */
export const carried = [
  '@fontsource-variable/source-sans-3',
  '@fontsource-variable/source-serif-4',
  'clsx',
  'd3-array',
  'd3-color',
  'd3-format',
  'd3-interpolate',
  'd3-path',
  'd3-scale',
  'd3-shape',
  'd3-time',
  'd3-time-format',
  'decimal.js',
  'electron',
  'esm-env',
  'exceljs',
  'highs',
  'internmap',
  'is-any-array',
  'jszip',
  'ml-array-max',
  'ml-array-min',
  'ml-array-rescale',
  'ml-matrix',
  'svelte',
  'valibot',
];

export const target = 'renderer/frame/licences.json';

if (process.argv[1] === fileURLToPath(import.meta.url)) {
  writeFileSync(`${projectRoot}/${target}`, await format(JSON.stringify(licencesOf(carried)), { parser: 'json' }));
  console.log(`Wrote ${target}.`);
}
