import { spawnSync } from 'node:child_process';
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { pathToFileURL } from 'node:url';
import { findProgram } from '../../build/lib/find-program.mjs';
import { twoWay } from '../../src/study/two-way.ts';
import { type BenchCase, resultId } from './bench-case.ts';
import { interleaved, median, timeOf } from './interleaved.ts';
import { type Measured, timesAsFast } from './measured.ts';
import { officeSheet } from './office-sheet.ts';
import { tablesOf } from './sides.ts';

const rounds = 3;
const timeLimit = 120_000;
// The program writes about ten digits of a number into the file by which it is compared.
const closeEnough = 1e-6;

/**
 * The same table as a data table of LibreOffice, which opens a sheet with it and one without: what the first takes longer is the table's.
 * Null where the program is not installed.
 */
export function measureOfficeTable(bench: BenchCase): Measured | null {
  const program = findProgram(['soffice', 'libreoffice']);
  if (program === undefined) return null;
  const folder = mkdtempSync(join(tmpdir(), 'tonne-bench-'));
  try {
    const { down, across } = tablesOf(bench).usual;
    writeFileSync(join(folder, 'plain.fods'), officeSheet(bench, down, across, false));
    writeFileSync(join(folder, 'table.fods'), officeSheet(bench, down, across, true));
    const table = (): string => opened(program, folder, 'table');
    const plain = (): string => opened(program, folder, 'plain');
    plain();
    demandEqual(table(), twoWay(bench.open, resultId, across, down).cells);
    const times = Array.from({ length: rounds }, () => timeOf(table, 1) - timeOf(plain, 1));
    const { ours } = interleaved({ ours: () => twoWay(bench.open, resultId, across, down) }, rounds);
    return timesAsFast('officeTable', 'the table, against a data table of LibreOffice', ours, median(times));
  } finally {
    rmSync(folder, { recursive: true, force: true });
  }
}

/** Opens a sheet and saves what its cells come to. */
function opened(program: string, folder: string, name: string): string {
  const profile = `-env:UserInstallation=${pathToFileURL(join(folder, 'profile')).href}`;
  const convert = ['--convert-to', 'csv', '--outdir', folder, join(folder, `${name}.fods`)];
  const { status } = spawnSync(program, ['--headless', profile, ...convert], { timeout: timeLimit });
  if (status !== 0) throw new Error('LibreOffice did not end well');
  return readFileSync(join(folder, `${name}.csv`), 'utf8');
}

function demandEqual(saved: string, cells: readonly (readonly number[])[]): void {
  const rows = saved.split('\n').slice(1, cells.length + 1);
  const theirs = rows.map((row) => row.split(',').slice(2).map(Number));
  const isEqual = cells.every((row, at) =>
    row.every((value, place) => Math.abs(value - (theirs[at]?.[place] ?? NaN)) <= closeEnough * Math.abs(value)),
  );
  if (!isEqual) throw new Error('LibreOffice gives another table');
}
