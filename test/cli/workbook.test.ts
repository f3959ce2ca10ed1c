import { readFile, readdir, symlink, writeFile, lstat } from 'node:fs/promises';
import { join } from 'node:path';
import ExcelJS from 'exceljs';
import { describe, expect, it } from 'vitest';
import { compare } from '../../src/index.ts';
import { demonstration } from '../examples/demonstration.ts';
import { temporaryFolder } from '../electron/temporary-folder.ts';
import { demonstrationFile as file, tonne } from './terminal.ts';

async function bookAt(path: string): Promise<ExcelJS.Workbook> {
  const book = new ExcelJS.Workbook();
  await book.xlsx.readFile(path);
  return book;
}

describe('workbook CASE --out FILE', () => {
  it('writes a workbook whose statement is that of the case', async () => {
    const target = join(await temporaryFolder(), 'mill.xlsx');
    const { code, out } = await tonne(['workbook', file, '--out', target, '--trials', '0']);
    const statement = (await bookAt(target)).getWorksheet('Statement');
    const whole = statement?.getColumn(1).values.indexOf('Whole cost') ?? 0;

    expect([code, out]).toEqual([0, `Written: ${target}\n`]);
    expect(statement?.getCell(whole, 6).result).toBe(compare(demonstration()).difference.perTonne);
  });

  it('takes figures given on the command line', async () => {
    const target = join(await temporaryFolder(), 'mill.xlsx');
    await tonne(['workbook', file, '--out', target, '--trials', '0', '--set', 'price.electricity=0.2']);
    const inputs = (await bookAt(target)).getWorksheet('Inputs');
    const row = inputs?.getColumn(17).values.indexOf('price.electricity') ?? 0;

    expect(inputs?.getCell(row, 3).value).toBe(0.2);
  });

  it('writes a case that cannot be worked out with errors in it, and says what they are', async () => {
    const target = join(await temporaryFolder(), 'mill.xlsx');
    const { code, out } = await tonne(['workbook', file, '--out', target, '--set', 'virgin.bskp.share=95']);

    expect(code).toBe(0);
    expect(out).toMatch(/In it as #N\/A: .*they already take/u);
    expect((await bookAt(target)).getWorksheet('Checks')?.getCell('C8').result).toMatch(/broken/u);
  });

  it('refuses a file of another kind', async () => {
    expect(await tonne(['workbook', file, '--out', 'mill.xls'])).toMatchObject({
      code: 2,
      err: '--out takes a file that ends in .xlsx; "mill.xls" was given.\n',
    });
  });
});

describe('a file that is written over', () => {
  it('is replaced through a link, which stays one', async () => {
    const folder = await temporaryFolder();
    const [target, link] = [join(folder, 'old.csv'), join(folder, 'link.csv')];
    await writeFile(target, 'old');
    await symlink(target, link);
    await tonne(['compare', file, '--csv', link]);

    expect((await lstat(link)).isSymbolicLink()).toBe(true);
    expect(await readFile(target, 'utf8')).toContain('Whole cost');
    expect((await readdir(folder)).sort()).toEqual(['link.csv', 'old.csv']);
  });

  it('is as it was when the new one cannot be written', async () => {
    const folder = await temporaryFolder();
    const target = join(folder, 'mill.xlsx');
    await writeFile(target, 'old');
    const { code } = await tonne(['workbook', file, '--out', target, '--set', 'price.electricity=dear']);

    expect(code).toBe(1);
    expect(await readFile(target, 'utf8')).toBe('old');
    expect(await readdir(folder)).toEqual(['mill.xlsx']);
  });

  // A device of Linux that is always full.
  it.runIf(process.platform === 'linux')('tells of a full disk in a sentence', async () => {
    expect(await tonne(['compare', file, '--csv', '/dev/full'])).toMatchObject({
      code: 1,
      err: '"/dev/full" cannot be written: the disk is full.\n',
    });
  });
});
