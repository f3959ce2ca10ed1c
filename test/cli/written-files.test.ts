import { readFile, readdir } from 'node:fs/promises';
import { join } from 'node:path';
import ExcelJS from 'exceljs';
import { describe, expect, it } from 'vitest';
import { compare, spreadOf } from '../../src/index.ts';
import { statementCsv } from '../../src/report/statement-csv.ts';
import { demonstration } from '../examples/demonstration.ts';
import { temporaryFolder } from '../electron/temporary-folder.ts';
import { demonstrationFile as file, tonne } from './terminal.ts';

const open = demonstration();
const comparison = compare(open);

describe('compare --csv', () => {
  it.each(['en', 'de-DE'])(
    'writes the statement in the numbers of %s, and prints the page all the same',
    async (locale) => {
      const target = join(await temporaryFolder(), 'statement.csv');
      const { code, out } = await tonne(['compare', file, '--csv', target], locale);

      expect(code).toBe(0);
      expect(out).toContain('Whole cost');
      expect(await readFile(target, 'utf8')).toBe(statementCsv(comparison, spreadOf(open, '2026-11-25'), locale));
    },
  );
});

describe('compare --workbook', () => {
  it('writes a workbook that holds the comparison', async () => {
    const target = join(await temporaryFolder(), 'statement.xlsx');
    const { code } = await tonne(['compare', file, '--workbook', target]);
    const book = new ExcelJS.Workbook();
    await book.xlsx.readFile(target);

    expect(code).toBe(0);
    const statement = book.getWorksheet('Statement');
    const whole = statement?.getColumn(1).values.indexOf('Whole cost') ?? 0;
    expect(statement?.getCell(whole, 2).result).toBe(comparison.routes[0]?.totals.costPerTonne);
  });
});

describe('a target that cannot be written', () => {
  it.each(['--csv', '--workbook'])('is told in a sentence, with 1 for an exit code: %s', async (option) => {
    const folder = await temporaryFolder();
    for (const [target, reason] of [
      [folder, 'it is a folder'],
      [join(folder, 'none', 'x'), 'there is no such file or folder'],
      [join(file, 'x'), 'there is a file where a folder should be'],
    ] as const) {
      const { code, out, err } = await tonne(['compare', file, option, target]);

      expect([code, out, err]).toEqual([1, '', `"${target}" cannot be written: ${reason}.\n`]);
    }
    expect(await readdir(folder)).toEqual([]);
  });

  it('leaves nothing behind when the case cannot be compared', async () => {
    const folder = await temporaryFolder();
    const { code } = await tonne(['compare', file, '--csv', join(folder, 'x.csv'), '--set', 'virgin.bskp.share=95']);

    expect(code).toBe(1);
    expect(await readdir(folder)).toEqual([]);
  });
});
