import { describe, expect, it } from 'vitest';
import { findBreaches } from '../../build/layers/find-breaches.mjs';

function breachesOf(tree: Record<string, string>): string[] {
  return findBreaches(new Map(Object.entries(tree)));
}

describe('the table of directions', () => {
  it('accepts a tree that keeps them', () => {
    const breaches = breachesOf({
      'src/kernel/units/unit.ts': "export type Unit = 't';",
      'src/paper/line.ts': "import type { Unit } from '../kernel/units/unit.ts';",
      'src/study/compare.ts': "export * from '../paper/line.ts';",
      'src/index.ts': "export { compare } from './study/compare.ts';",
      'electron/host.ts': 'export interface Host {}',
      'renderer/main.ts': "import { compare } from '../src/index.ts'; import type { Host } from '../electron/host.ts';",
      'test/study/compare.test.ts': "import { compare } from '../../src/study/compare.ts';",
    });
    expect(breaches).toEqual([]);
  });

  it('names the file, the import and what may be used instead', () => {
    const breaches = breachesOf({ 'src/study/x.ts': "\nimport { plan } from '../workbook/plan.ts';" });
    expect(breaches).toEqual([
      'src/study/x.ts:2 may not import src/workbook/plan.ts; study may use: paper, case, kernel',
    ]);
  });

  it.each([
    ['a type import', 'src/kernel/a.ts', "import type { Case } from '../case/case.ts';"],
    ['a type inside a type', 'src/kernel/a.ts', "export type C = import('../case/case.ts').Case;"],
    ['a re-export', 'src/case/a.ts', "export { line } from '../paper/line.ts';"],
    ['a dynamic import', 'src/paper/a.ts', "const later = () => import('../study/compare.ts');"],
    ['a worker by its address', 'renderer/a.ts', "new Worker(new URL('../src/kernel/a.ts', import.meta.url));"],
    ['a raw text', 'renderer/a.ts', "import text from '../src/kernel/a.ts?raw';"],
    ['a component', 'renderer/a.svelte', '<p>hello</p>\n<script lang="ts">import "../src/study/compare.ts";</script>'],
    ['study using wording', 'src/study/a.ts', "import { sentence } from '../wording/sentence.ts';"],
    ['the screen in the main process', 'electron/main.ts', "import { app } from '../renderer/app.ts';"],
    ['the engine past its index', 'electron/main.ts', "import { read } from '../src/case/read.ts';"],
    ['the terminal in the index', 'src/index.ts', "export { main } from './cli/main.ts';"],
  ])('refuses %s that goes against a direction', (_name, path, text) => {
    expect(breachesOf({ [path]: text })).toEqual([expect.stringContaining('may not import')]);
  });

  it('lets the screen take types, and no values, from the list of verbs', () => {
    const breaches = breachesOf({ 'renderer/a.ts': "import { type Host, verbs } from '../electron/host.ts';" });
    expect(breaches).toEqual(['renderer/a.ts:1 may import only types from electron/host.ts; write "import type"']);
  });

  it('refuses the workbook library outside its one writer', () => {
    const breaches = breachesOf({
      'src/workbook/write-xlsx.ts': "import ExcelJS from 'exceljs';",
      'src/workbook/plan.ts': "import ExcelJS from 'exceljs';",
    });
    expect(breaches).toEqual([
      'src/workbook/plan.ts:1 may not import exceljs; only src/workbook/write-xlsx.ts, test/ may',
    ]);
  });

  it('refuses a file that belongs to no storey', () => {
    expect(breachesOf({ 'src/misc/a.ts': '' })).toEqual([
      expect.stringContaining('src/misc/a.ts belongs to no storey'),
    ]);
  });

  it('refuses an import without its extension', () => {
    const breaches = breachesOf({ 'src/kernel/a.ts': "import './b';" });
    expect(breaches).toEqual(['src/kernel/a.ts:1 must import ./b with its extension']);
  });

  it('ignores what only looks like an import', () => {
    expect(
      breachesOf({ 'src/kernel/a.ts': "// import '../study/a.ts';\nexport const t = \"import '../study/a.ts'\";" }),
    ).toEqual([]);
  });

  it('refuses files that import each other in a circle, once for each circle', () => {
    const breaches = breachesOf({
      'src/kernel/a.ts': "import './b.ts';",
      'src/kernel/b.ts': "import type { C } from './c.ts';",
      'src/kernel/c.ts': "import './a.ts'; import './d.ts';",
      'src/kernel/d.ts': '',
    });
    expect(breaches).toEqual([
      'src/kernel/a.ts -> src/kernel/b.ts -> src/kernel/c.ts -> src/kernel/a.ts is a circle; move what they share into a file of its own',
    ]);
  });
});
