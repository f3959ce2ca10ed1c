import { readFile, writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { caseText, editStructure } from '../../src/index.ts';
import { demonstration, valueOf } from '../examples/demonstration.ts';
import { temporaryFolder } from '../electron/temporary-folder.ts';
import { demonstrationFile as file, jsonOf, tonne } from './terminal.ts';

async function savedWith(...edits: readonly Parameters<typeof editStructure>[1][]): Promise<string> {
  const open = edits.reduce((from, edit) => valueOf(editStructure(from, edit)), demonstration());
  const target = join(await temporaryFolder(), 'case.tonne');
  await writeFile(target, caseText(open));
  return target;
}
const dated = { kind: 'date input', input: 'price.electricity', date: '2026-03-03' } as const;
const actual = {
  result: 'virgin.electricity.total',
  value: '88000',
  unit: 'MWh/a',
  period: '2024',
  source: 'Main meter',
} as const;

describe('--today', () => {
  it('tells ages by another day than the one it is', async () => {
    const target = await savedWith(dated);
    const told = async (...more: string[]): Promise<string> => (await tonne(['check', target, ...more])).out;

    // The test console says that it is 25 November 2026.
    expect(await told()).toContain('Electricity: price of 3 March 2026, 8 months ago; after 6 months');
    expect(await told('--today', '2026-09-03')).not.toContain('Electricity: price of');
    expect(await told('--today', '2027-03-04')).toContain(
      'Electricity: price of 3 March 2026, 12 months ago: out of date',
    );
  });

  it('that is no day of the calendar is a wrong use', async () => {
    const { code, err } = await tonne(['compare', file, '--today', '2026-02-29']);

    expect(code).toBe(2);
    expect(err).toContain('--today takes a day such as 2026-11-25; "2026-02-29" was given.');
  });
});

describe('--dated', () => {
  it('says of which day the figures of --set are', async () => {
    const { dates } = (await jsonOf(['compare', file, '--set', 'price.electricity=0.1', '--dated', '2026-10-01'])) as {
      dates: { id: string; date: string; months: number | null; freshness: string }[];
    };

    expect(dates.find(({ id }) => id === 'price.electricity')).toMatchObject({
      date: '2026-10-01',
      months: 1,
      freshness: 'in date',
    });
  });
});

describe('reconcile', () => {
  it('prints what was measured beside what is computed, in the unit it was measured in', async () => {
    const { out } = await tonne(['reconcile', await savedWith({ kind: 'put actual', actual })]);

    // By hand: 927.1 kWh/t x 96,000 t is 89,002 MWh, 1.1 % above 88,000.
    expect(out).toMatch(/Electricity needed +MWh\/year +89,000 +88,000 +\+1\.1 % +2024 +Main meter/u);
    expect(out).toContain('Nothing is fitted.');
  });

  it('says so where nothing was measured', async () => {
    expect((await tonne(['reconcile', file])).out).toContain('Nothing measured is entered yet.');
  });

  it('is one group for the mill and one for each route in JSON', async () => {
    const { groups } = (await jsonOf(['reconcile', await savedWith({ kind: 'put actual', actual })])) as {
      groups: { route: string | null; rows: { result: string; actual: { gap: number; isWide: boolean } | null }[] }[];
    };

    expect(groups.map(({ route }) => route)).toEqual([null, 'virgin', 'recovered']);
    const found = groups[1]?.rows.find(({ result }) => result === actual.result);
    expect(found?.actual?.gap).toBeCloseTo(89_002 / 88_000 - 1, 4);
    expect(found?.actual?.isWide).toBe(false);
  });

  it('joins the workbook as a sheet of its own once something was measured', async () => {
    const folder = await temporaryFolder();
    const sheetsOf = async (from: string): Promise<string> => {
      const target = join(folder, 'statement.xlsx');
      await tonne(['compare', from, '--workbook', target]);
      const { default: ExcelJS } = await import('exceljs');
      const book = new ExcelJS.Workbook();
      await book.xlsx.load((await readFile(target)).buffer);
      return book.worksheets.map(({ name }) => name).join(', ');
    };

    expect(await sheetsOf(file)).not.toContain('Measured');
    expect(await sheetsOf(await savedWith({ kind: 'put actual', actual }))).toContain(', Measured, ');
  });
});
