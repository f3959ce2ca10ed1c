import ExcelJS from 'exceljs';
import { describe, expect, it } from 'vitest';
import type { Cell, SheetPlan, WorkbookPlan } from '../../src/workbook/plan.ts';
import { writeXlsx } from '../../src/workbook/write-xlsx.ts';

const formula = (words: string, result: number | string | { readonly error: '#N/A' }): Cell => ({
  kind: 'formula',
  formula: words,
  result,
  form: 'as typed',
});
const sheet = (rows: readonly (readonly Cell[])[], more: Partial<SheetPlan> = {}): SheetPlan => ({
  name: 'Sheet one',
  columns: [{ width: 20 }, { width: 10 }],
  rows,
  frozenRows: 0,
  ...more,
});

async function written(plan: Partial<WorkbookPlan>): Promise<ExcelJS.Workbook> {
  const book = new ExcelJS.Workbook();
  await book.xlsx.load((await writeXlsx({ sheets: [], names: [], ...plan })).buffer as ArrayBuffer);
  return book;
}
async function first(plan: SheetPlan): Promise<ExcelJS.Worksheet> {
  const [found] = (await written({ sheets: [plan] })).worksheets;
  if (found === undefined) throw new Error('The sheet is missing');
  return found;
}

describe('a formula', () => {
  it.each([12.5, 0, -3, 'words', ''])('carries what the program makes of it: %s', async (result) => {
    const cell = (await first(sheet([[formula('A2+1', result)]]))).getCell('A1');

    expect(cell.formula).toBe('A2+1');
    // Nothing at all is how the reader tells an empty word.
    expect((cell.result as unknown) ?? '').toBe(result);
  });

  it('carries an error where the program cannot work it out', async () => {
    const cell = (await first(sheet([[formula('A2+1', { error: '#N/A' })]]))).getCell('A1');

    expect(cell.result).toEqual({ error: '#N/A' });
  });

  it.each(['', '=A1', ' =A1', 'A'.repeat(8193)])('is refused as "%s"', async (words) => {
    await expect(writeXlsx({ sheets: [sheet([[formula(words, 1)]])], names: [] })).rejects.toThrow('Not a formula');
  });

  it('is refused with a result that is not finite', async () => {
    await expect(writeXlsx({ sheets: [sheet([[formula('A1', NaN)]])], names: [] })).rejects.toThrow('not finite');
  });
});

describe('the name of a cell', () => {
  it('stands for that cell', async () => {
    const book = await written({
      sheets: [sheet([[]], { name: 'One & two' })],
      names: [{ name: 'a_b', sheet: 'One & two', row: 3, column: 28 }],
    });

    expect(book.definedNames.getRanges('a_b').ranges).toEqual(["'One & two'!$AB$3"]);
  });

  it.each(['CO2', 'A1', 'R1C1', 'a b', '1_a', 'a-b_c', ''])('is refused as "%s"', async (name) => {
    const names = [{ name, sheet: 'Sheet one', row: 1, column: 1 }];

    await expect(writeXlsx({ sheets: [sheet([[]])], names })).rejects.toThrow(`Not a name of a cell: "${name}"`);
  });

  it('is refused the second time, however capitalised', async () => {
    const names = ['a_b', 'A_B'].map((name) => ({ name, sheet: 'Sheet one', row: 1, column: 1 }));

    await expect(writeXlsx({ sheets: [sheet([[]])], names })).rejects.toThrow('Not a name of a cell: "A_B"');
  });
});

describe('a sheet', () => {
  it('is locked but for the cells to type in', async () => {
    const found = await first(sheet([[formula('1+1', 2), { kind: 'entry', value: 3, form: 'as typed' }]]));

    expect((found as unknown as { sheetProtection: { sheet: boolean } }).sheetProtection.sheet).toBe(true);
    // Locked is what a cell is unless it says otherwise.
    const isLocked = (at: string): boolean =>
      (found.getCell(at).style as { protection?: { locked?: boolean } }).protection?.locked ?? true;
    expect([isLocked('A1'), isLocked('B1')]).toEqual([true, false]);
  });

  it('refuses what is out of bounds as it is typed, in a sentence', async () => {
    const accepts = { bounds: { least: '0', most: '100' }, sentence: 'Share: possible is 0 to 100 %.' };
    const found = await first(sheet([[{ kind: 'entry', value: 3, form: 'as typed', accepts }]]));

    expect(found.getCell('A1').dataValidation).toMatchObject({
      type: 'decimal',
      formulae: [0, 100],
      error: 'Share: possible is 0 to 100 %.',
    });
  });

  it('keeps its heads and first columns in view, and prints them on every page', async () => {
    const found = await first(sheet([[], [], []], { frozenRows: 2, frozenColumns: 1 }));

    expect(found.views[0]).toMatchObject({ state: 'frozen', ySplit: 2, xSplit: 1 });
    expect(found.pageSetup).toMatchObject({
      orientation: 'landscape',
      fitToWidth: 1,
      printArea: 'A1:B3',
      printTitlesRow: '1:2',
    });
  });

  it('holds its pictures', async () => {
    // The smallest picture there is: one pixel (PNG, W3C recommendation 2003).
    const png = Uint8Array.from(
      atob('iVBORw0KGgoAAAANSUhEUgAAAAEAAAABCAQAAAC1HAwCAAAAC0lEQVR42mNkYAAAAAYAAjCB0C8AAAAASUVORK5CYII='),
      (letter) => letter.charCodeAt(0),
    );
    const found = await first(sheet([[]], { pictures: [{ png, width: 300, height: 200, row: 4, column: 2 }] }));
    const [image] = found.getImages();

    expect(image?.range.tl).toMatchObject({ nativeRow: 3, nativeCol: 1 });
    expect((found.workbook.getImage(Number(image?.imageId)) as unknown as { buffer: Uint8Array }).buffer).toHaveLength(
      png.length,
    );
  });

  it('turns a verdict red when it holds a broken check', async () => {
    const found = await first(
      sheet([[{ ...formula('"A check is broken"', 'A check is broken'), look: 'verdict' } as Cell]]),
    );
    const [mark] = (found as unknown as { conditionalFormattings: { ref: string }[] }).conditionalFormattings;

    expect(mark?.ref).toBe('A1');
  });
});
