import ExcelJS from 'exceljs';
import { describe, expect, it } from 'vitest';
import type { Cell, SheetPlan, WorkbookPlan } from '../../src/workbook/plan.ts';
import { writeXlsx } from '../../src/workbook/write-xlsx.ts';

const text = (value: string, strong = false): Cell => ({
  kind: 'text',
  text: value,
  ...(strong ? { look: 'strong' as const } : {}),
});
const sheet = (rows: readonly (readonly Cell[])[], more: Partial<SheetPlan> = {}): SheetPlan => ({
  name: 'Sheet',
  columns: [{ width: 20 }],
  rows,
  frozenRows: 0,
  ...more,
});

const bookOf = (...sheets: readonly SheetPlan[]): WorkbookPlan => ({ sheets, names: [] });

async function readBack(plan: WorkbookPlan): Promise<ExcelJS.Workbook> {
  const book = new ExcelJS.Workbook();
  await book.xlsx.load((await writeXlsx(plan)).buffer as ArrayBuffer);
  return book;
}

async function onlyCell(cell: Cell): Promise<ExcelJS.Cell> {
  const book = await readBack(bookOf(sheet([[cell]])));
  const found = book.worksheets[0]?.getCell(1, 1);
  if (found === undefined) throw new Error('The sheet is missing');
  return found;
}

describe('a cell', () => {
  it.each([0, 1, -60.35980786027401, 1e-12, 9007199254740991, 0.1 + 0.2, 5794541.554586304])(
    'holds the number %d with all its digits',
    async (value) => {
      const cell = await onlyCell({ kind: 'number', value, form: 'money' });

      expect(cell.type).toBe(ExcelJS.ValueType.Number);
      expect(cell.value).toBe(value);
    },
  );

  it.each([
    { form: 'money', pattern: '#,##0.00' },
    { form: 'whole money', pattern: '#,##0' },
    { form: 'quantity', pattern: '#,##0.0000' },
  ] as const)('shows $form as $pattern', async ({ form, pattern }) => {
    expect((await onlyCell({ kind: 'number', value: 1, form })).numFmt).toBe(pattern);
  });

  it.each(['=1+1', '=HYPERLINK("x")', '+1', '-1', '@x', '1e5', '007', 'true', '', ' spaced ', 'Ä € 漢 😀', '<&">'])(
    'keeps the text "%s" text',
    async (value) => {
      const cell = await onlyCell(text(value));

      expect(cell.value ?? '').toBe(value);
      if (value !== '') expect(cell.type).toBe(ExcelJS.ValueType.String);
    },
  );

  it.each([
    { given: 'a\u0000b\u001fc', kept: 'a\ufffdb\ufffdc' },
    { given: 'half \ud83d pair', kept: 'half \ufffd pair' },
    { given: 'end\uffff', kept: 'end\ufffd' },
    { given: 'two\nlines\tand a tab', kept: 'two\nlines\tand a tab' },
    { given: '_x0041_ stays', kept: '_x0041_ stays' },
  ])('writes "$given" so that it is read as "$kept"', async ({ given, kept }) => {
    expect((await onlyCell(text(given))).value).toBe(kept);
  });

  it('is cut at what a cell can hold', async () => {
    expect((await onlyCell(text('x'.repeat(40_000)))).value).toBe('x'.repeat(32_767));
  });

  it('is bold where it is strong', async () => {
    const book = await readBack(bookOf(sheet([[text('strong', true), text('plain')]])));

    expect(book.worksheets[0]?.getCell(1, 1).font.bold).toBe(true);
    expect(book.worksheets[0]?.getCell(1, 2).font.bold).toBeUndefined();
  });

  it('that is empty stays empty, and what follows stays in its column', async () => {
    const book = await readBack(bookOf(sheet([[{ kind: 'empty' }, text('second')], [], [text('third row')]])));

    expect(book.worksheets[0]?.getCell(1, 1).value).toBeNull();
    expect(book.worksheets[0]?.getCell(1, 2).value).toBe('second');
    expect(book.worksheets[0]?.getCell(3, 1).value).toBe('third row');
  });
});

describe('a sheet', () => {
  it('has its name, its widths and its frozen rows', async () => {
    const plan = sheet([[text('head')]], {
      name: 'What is compared (1)',
      columns: [{ width: 12 }, { width: 34 }],
      frozenRows: 2,
    });
    const [found] = (await readBack(bookOf(plan, sheet([], { name: 'Other' })))).worksheets;

    expect(found?.name).toBe('What is compared (1)');
    expect([found?.getColumn(1).width, found?.getColumn(2).width]).toEqual([12, 34]);
    expect(found?.views[0]).toMatchObject({ state: 'frozen', ySplit: 2 });
  });

  it('without frozen rows is not frozen', async () => {
    const [found] = (await readBack(bookOf(sheet([[text('head')]])))).worksheets;

    expect(found?.name).toBe('Sheet');
    expect(found?.views ?? []).toEqual([]);
  });
});

describe('what a spreadsheet would call damaged is refused', () => {
  it.each([NaN, Infinity, -Infinity])('the number %d', async (value) => {
    const plan = bookOf(sheet([[{ kind: 'number', value, form: 'money' }]]));

    await expect(writeXlsx(plan)).rejects.toThrow('not finite');
  });

  it.each(['', 'a/b', 'a\\b', 'a?', 'a*', 'a[1]', 'a:b', "'a", "a'", "a'b", 'a!b', 'x'.repeat(32)])(
    'the sheet name "%s"',
    async (name) => {
      await expect(writeXlsx(bookOf(sheet([], { name })))).rejects.toThrow(`Not a sheet name: "${name}"`);
    },
  );

  it('two sheets of one name, however capitalised', async () => {
    const plan = bookOf(sheet([], { name: 'Costs' }), sheet([], { name: 'costs' }));

    await expect(writeXlsx(plan)).rejects.toThrow('Not a sheet name: "costs"');
  });

  it('but the longest name is not', async () => {
    expect((await readBack(bookOf(sheet([], { name: 'x'.repeat(31) })))).worksheets[0]?.name).toHaveLength(31);
  });
});
