import { execFile } from 'node:child_process';
import { mkdir, mkdtemp, readdir, rm, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { pathToFileURL } from 'node:url';
import { promisify } from 'node:util';
import ExcelJS from 'exceljs';
import type { Reader } from '../../workbook/support/disagreements.ts';

/** Always work out anew what stands in a file (org.openoffice.Office.Calc, Formula/Load, OOXMLRecalcMode: 0 is always). */
const settings = `<?xml version="1.0" encoding="UTF-8"?>
<oor:items xmlns:oor="http://openoffice.org/2001/registry" xmlns:xs="http://www.w3.org/2001/XMLSchema" xmlns:xsi="http://www.w3.org/2001/XMLSchema-instance">
<item oor:path="/org.openoffice.Office.Calc/Formula/Load"><prop oor:name="OOXMLRecalcMode" oor:op="fuse"><value>0</value></prop></item>
</oor:items>`;

const run = promisify(execFile);

/**
 * Workbooks as LibreOffice works them out, whatever results stood in them, by name: one start of the program for all of them, with a profile
 * of its own. Throws where it does not open one.
 */
export async function reckonAnew(
  books: ReadonlyMap<string, Uint8Array>,
): Promise<ReadonlyMap<string, ExcelJS.Workbook>> {
  const office = process.env['SOFFICE'];
  if (office === undefined || office === '') throw new Error('SOFFICE names no program');
  const folder = await mkdtemp(join(tmpdir(), 'tonne-office-'));
  const [profile, given, made] = ['profile', 'given', 'made'].map((name) => join(folder, name)) as [
    string,
    string,
    string,
  ];
  await mkdir(join(profile, 'user'), { recursive: true });
  await mkdir(given);
  await writeFile(join(profile, 'user', 'registrymodifications.xcu'), settings);
  for (const [name, bytes] of books) await writeFile(join(given, `${name}.xlsx`), bytes);
  const files = (await readdir(given)).map((name) => join(given, name));
  const options = [
    `-env:UserInstallation=${pathToFileURL(profile).href}`,
    '--headless',
    '--convert-to',
    'xlsx',
    '--outdir',
    made,
  ];
  await run(office, [...options, ...files], { timeout: 200_000 });
  const found = new Map<string, ExcelJS.Workbook>();
  for (const name of books.keys()) {
    const book = new ExcelJS.Workbook();
    await book.xlsx.readFile(join(made, `${name}.xlsx`));
    found.set(name, book);
  }
  await rm(folder, { recursive: true });
  return found;
}

/** Reads cells of such a book; an error as its name. */
export function readerOf(book: ExcelJS.Workbook): Reader {
  return (sheet, row, column) => {
    const cell = book.getWorksheet(sheet)?.getCell(row, column);
    // The value of a formula leaves a result of 0 out; the cell itself keeps it.
    const value: unknown = cell?.type === ExcelJS.ValueType.Formula ? cell.result : cell?.value;
    return typeof value === 'object' && value !== null && 'error' in value ? value.error : value;
  };
}
