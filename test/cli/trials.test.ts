import { readFile, readdir } from 'node:fs/promises';
import { join } from 'node:path';
import ExcelJS from 'exceljs';
import { describe, expect, it } from 'vitest';
import { trialPlan, trialRows, uncertainty } from '../../src/index.ts';
import { run } from '../../src/cli/run.ts';
import { demonstration } from '../examples/demonstration.ts';
import { temporaryFolder } from '../electron/temporary-folder.ts';
import { demonstrationFile as file, tonne } from './terminal.ts';

const open = demonstration();
const mean = (values: readonly number[]): number => values.reduce((sum, value) => sum + value, 0) / values.length;

describe('trials CASE --out FILE', () => {
  it('writes every trial as comma-separated values, with a mark of the encoding', async () => {
    const target = join(await temporaryFolder(), 'trials.csv');
    const { code, out } = await tonne(['trials', file, '--out', target, '--trials', '2500']);
    const text = await readFile(target, 'utf8');
    const lines = text.trimEnd().split('\r\n');
    const summary = uncertainty(open, 'difference.total', { trials: 2500 });

    expect([code, out]).toEqual([0, `Written: ${target}, 2,500 trials\n`]);
    expect(text.startsWith('\uFEFFTrial,')).toBe(true);
    expect(lines).toHaveLength(2501);
    expect(mean(lines.slice(1).map((line) => Number(line.split(',')[1])))).toBeCloseTo(
      summary.results[0]?.mean ?? NaN,
      9,
    );
  });

  it('writes semicolons where the decimal mark is a comma', async () => {
    const target = join(await temporaryFolder(), 'trials.csv');
    await tonne(['trials', file, '--out', target, '--trials', '1000'], 'de-DE');
    const [, first] = (await readFile(target, 'utf8')).split('\r\n');

    expect(first).toMatch(/^1;-?\d+,\d+;\d+,\d+;/u);
  });

  it('writes the same trials as a workbook', async () => {
    const target = join(await temporaryFolder(), 'trials.xlsx');
    await tonne(['trials', file, '--out', target, '--trials', '1500']);
    const book = new ExcelJS.Workbook();
    await book.xlsx.readFile(target);
    const sheet = book.getWorksheet('Trials');
    const rows = [...trialRows(trialPlan(open, 'difference.total', { trials: 1500 }))].flat();

    expect(sheet?.rowCount).toBe(1501);
    for (const at of [0, 1023, 1024, 1499])
      expect((sheet?.getRow(at + 2).values as number[]).slice(1)).toEqual([at + 1, ...(rows[at] ?? [])]);
  });

  it('says how far it has come, and leaves nothing behind when it is stopped', async () => {
    const folder = await temporaryFolder();
    const told: string[] = [];
    let complaint = '';
    let stop = (): void => undefined;
    const code = await run(['trials', file, '--out', join(folder, 'trials.csv'), '--trials', '5000'], {
      say: () => undefined,
      complain: (text) => (complaint += text),
      locale: 'en',
      today: '2026-11-25',
      progress: (text) => {
        told.push(text);
        if (told.length === 2) stop();
      },
      onStop: (wanted) => {
        stop = wanted;
        return () => undefined;
      },
    });

    expect(told).toEqual(['1,024 of 5,000 trials', '2,048 of 5,000 trials']);
    expect(code).toBe(1);
    expect(complaint).toMatch(/^Stopped after 2,048 trials; ".*trials\.csv" is as it was\.\n$/u);
    expect(await readdir(folder)).toEqual([]);
  });

  it('refuses a file of another kind', async () => {
    expect(await tonne(['trials', file, '--out', 'trials.txt'])).toMatchObject({ code: 2 });
  });
});
