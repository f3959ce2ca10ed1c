/**
 * Who may import whom, types included. The first matching folder decides a file's storey, so the narrower path stands first.
 * `uses` names storeys; `alsoFiles` opens single files of a storey that is otherwise closed.
 * @typedef {{ name: string, at: string, uses: readonly string[], alsoFiles?: readonly string[] }} Storey
 */

const engine = ['study', 'paper', 'case', 'kernel'];

/** @type {readonly Storey[]} */
export const storeys = [
  { name: 'kernel', at: 'src/kernel', uses: [] },
  { name: 'case', at: 'src/case', uses: ['kernel'] },
  { name: 'paper', at: 'src/paper', uses: ['case', 'kernel'] },
  { name: 'study', at: 'src/study', uses: ['paper', 'case', 'kernel'] },
  { name: 'wording', at: 'src/wording', uses: engine },
  { name: 'workbook', at: 'src/workbook', uses: ['wording', ...engine] },
  { name: 'report', at: 'src/report', uses: ['wording', ...engine] },
  { name: 'index', at: 'src/index.ts', uses: ['workbook', 'report', 'wording', ...engine] },
  // The writer of workbooks is kept out of the index: it carries a large library, which only its callers should load.
  {
    name: 'cli',
    at: 'src/cli',
    uses: ['index', 'workbook', 'report', 'wording', ...engine],
    // Papers name the version that made them.
    alsoFiles: ['package.json'],
  },
  { name: 'electron', at: 'electron', uses: ['index'] },
  {
    name: 'renderer',
    at: 'renderer',
    uses: ['index', 'wording', 'examples'],
    alsoFiles: [
      'electron/host.ts',
      // Plain data and its form, the same in a browser.
      'electron/preferences.ts',
      'electron/preferences-schema.ts',
      'src/workbook/write-xlsx.ts',
      'src/study/lots/blend/highs-solver.ts',
    ],
  },
  { name: 'examples', at: 'examples', uses: [] },
  { name: 'build', at: 'build', uses: [] },
  {
    name: 'test',
    at: 'test',
    uses: ['cli', 'index', 'workbook', 'report', 'wording', ...engine, 'electron', 'renderer', 'examples', 'build'],
  },
];

/** Files of another storey that only lend their types: importing a value from them would drag that storey's code along. */
export const typesOnly = ['electron/host.ts'];

/** Packages with a single door: everything else reaches them through it. */
export const packageDoors = [
  { name: 'exceljs', doors: ['src/workbook/write-xlsx.ts', 'test/'] },
  { name: 'highs', doors: ['src/study/lots/blend/highs-solver.ts', 'test/'] },
  { name: 'electron', doors: ['electron/', 'test/'] },
];
