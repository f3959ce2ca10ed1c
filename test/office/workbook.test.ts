import type ExcelJS from 'exceljs';
import { beforeAll, describe, expect, test } from 'vitest';
import { changeInput } from '../../src/index.ts';
import { modelLayout } from '../../src/workbook/model/model-layout.ts';
import { SheetNames } from '../../src/workbook/sheet-names.ts';
import { writeXlsx } from '../../src/workbook/write-xlsx.ts';
import { demonstration, valueOf } from '../examples/demonstration.ts';
import { bookCases, planCase } from '../workbook/support/book-cases.ts';
import { changedInput, changedInputs, withChanges } from '../workbook/support/changed-inputs.ts';
import { disagreements, formulasOf } from '../workbook/support/disagreements.ts';
import { isOfTheModel } from '../workbook/support/model-sheets.ts';
import { planOf } from '../workbook/support/plan-of.ts';
import { reckonAnew, readerOf } from './support/reckon-anew.ts';
import { withTyped } from './support/with-typed.ts';

const cases = bookCases();
const paperPrice = 'material.mixed.price';
const layout = modelLayout(demonstration(), new SheetNames());
const dearerPaper = [changedInput(layout, paperPrice, 145)];

/** Figures typed over in a workbook, and the case in which the program is told the same. */
const typed = {
  'demonstration, ten inputs': { open: demonstration(), ...changedInputs(demonstration(), 11, 10) },
  'plan, ten inputs': { open: planCase(), ...changedInputs(planCase(), 12, 10) },
  'demonstration, dearer paper': {
    open: demonstration(),
    changes: dearerPaper,
    changed: withChanges(demonstration(), dearerPaper),
  },
} as const;
const failing = valueOf(changeInput(demonstration(), 'virgin.bskp.share', '95', { source: 'Test' }));

let books: ReadonlyMap<string, ExcelJS.Workbook> = new Map();

function bookNamed(name: string): ExcelJS.Workbook {
  const book = books.get(name);
  if (book === undefined) throw new Error(`No book "${name}"`);
  return book;
}

beforeAll(async () => {
  const written = new Map<string, Uint8Array>();
  for (const [name, open] of cases) written.set(name, await writeXlsx(planOf(open)));
  for (const [name, { open, changes }] of Object.entries(typed))
    written.set(name, await writeXlsx(withTyped(planOf(open), changes)));
  written.set('failing', await writeXlsx(planOf(failing)));
  books = await reckonAnew(written);
  // A machine that is busy with other things takes its time over the one start of the office program.
}, 240_000);

describe('a workbook that LibreOffice works out anew', () => {
  test.each(cases)('agrees with the program in every cell: %s', (name, open) => {
    const plan = planOf(open);

    expect(disagreements(plan, open, readerOf(bookNamed(name)))).toEqual([]);
    expect(formulasOf(plan).length).toBeGreaterThan(1000);
  });

  test.each(Object.entries(typed))(
    'follows figures that are typed over as the program does: %s',
    (name, { changes, changed }) => {
      const wanted = planOf(changed);
      const followed = { ...wanted, sheets: wanted.sheets.filter((sheet) => isOfTheModel(sheet.name)) };
      const read = readerOf(bookNamed(name));

      expect(disagreements(followed, changed, read)).toEqual([]);
      expect([read('Checks', 6, 3), read('Checks', 7, 3), read('Checks', 8, 3)]).toEqual([
        changes.length,
        1,
        'Every check is kept',
      ]);
    },
  );

  test('shows an error wherever the program cannot work something out, and says that a check is broken', () => {
    const read = readerOf(bookNamed('failing'));

    expect(disagreements(planOf(failing), failing, read)).toEqual([]);
    expect(read('Checks', 8, 3)).toBe('A check is broken: see the sheet Checks');
  });
});
