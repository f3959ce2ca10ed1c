/** The steps of `npm run check` that need no tests, each a program of this project's packages with its arguments. */

const storeys = ['src', 'src/workbook', 'src/cli', 'electron', 'test', 'build'];

/** @typedef {{ name: string, script: string, args: readonly string[] }} Step */

/** @type {readonly Step[]} */
export const checkSteps = [
  // The slowest two first, since two steps run at a time.
  { name: 'lint', script: 'node_modules/eslint/bin/eslint.js', args: ['--max-warnings', '0', '.'] },
  {
    name: 'types of components',
    script: 'node_modules/svelte-check/bin/svelte-check',
    args: ['--tsconfig', 'renderer/tsconfig.json', '--fail-on-warnings', '--output', 'human'],
  },
  ...storeys.map((storey) => ({
    name: `types of ${storey}`,
    script: 'node_modules/typescript/bin/tsc',
    args: ['--project', `${storey}/tsconfig.json`],
  })),
  {
    name: 'format',
    script: 'node_modules/prettier/bin/prettier.cjs',
    args: ['--check', '--log-level', 'warn', '.'],
  },
  { name: 'layers', script: 'build/layers.mjs', args: [] },
  { name: 'unused code', script: 'node_modules/knip/bin/knip.js', args: ['--no-progress'] },
];
