import { describe, expect, test } from 'vitest';
import { changeInput } from '../../src/index.ts';
import { modelLayout } from '../../src/workbook/model/model-layout.ts';
import { SheetNames } from '../../src/workbook/sheet-names.ts';
import { demonstration, valueOf } from '../examples/demonstration.ts';
import { randomOpenCase } from '../report/random-open-case.ts';
import { bookCases, planCase } from '../workbook/support/book-cases.ts';
import { changedInput, changedInputs } from '../workbook/support/changed-inputs.ts';
import { disagreements, formulasOf } from '../workbook/support/disagreements.ts';
import { isOfTheModel } from '../workbook/support/model-sheets.ts';
import { planOf } from '../workbook/support/plan-of.ts';
import { ReckonedBook } from '../workbook/support/reckoned-book.ts';

const cases = bookCases();

describe('a workbook, worked out by a spreadsheet engine', () => {
  test.each(cases)('gives what the program gives in every cell: %s', (_, open) => {
    const plan = planOf(open);
    const book = new ReckonedBook(plan);

    expect(disagreements(plan, open, (...at) => book.at(...at))).toEqual([]);
    expect(formulasOf(plan).length).toBeGreaterThan(1000);
    book.close();
  });

  test('gives it for 12 random cases', () => {
    for (let seed = 52_000; seed < 52_012; seed += 1) {
      const open = randomOpenCase(seed);
      const plan = planOf(open);
      const book = new ReckonedBook(plan);

      expect(
        disagreements(plan, open, (...at) => book.at(...at)),
        `seed ${String(seed)}`,
      ).toEqual([]);
      book.close();
    }
  });

  test.each([
    ['demonstration', demonstration(), 1],
    ['demonstration', demonstration(), 2],
    ['plan', planCase(), 3],
    ['plan', planCase(), 4],
  ] as const)('follows ten changed inputs as the program does, and keeps its checks: %s', (_, open, seed) => {
    const { changes, changed } = changedInputs(open, seed, 10);
    const book = new ReckonedBook(planOf(open));
    for (const { figure, row, column } of changes) book.set('Inputs', row, column, figure);
    const wanted = planOf(changed);
    const followed = { ...wanted, sheets: wanted.sheets.filter(({ name }) => isOfTheModel(name)) };

    expect(disagreements(followed, changed, (...at) => book.at(...at))).toEqual([]);
    expect(book.at('Checks', 8, 3)).toBe('Every check is kept');
    expect(book.at('Checks', 6, 3)).toBe(changes.length);
    book.close();
  });
});

describe('what cannot be worked out', () => {
  test('is an error in the workbook wherever it is a failure in the program, and nowhere else', () => {
    // Shares that leave less than nothing for the balancing line.
    const open = valueOf(changeInput(demonstration(), 'virgin.bskp.share', '95', { source: 'Test' }));
    const plan = planOf(open);
    const book = new ReckonedBook(plan);
    const errors = formulasOf(plan).filter(({ cell }) => typeof cell.result === 'object');

    expect(errors.length).toBeGreaterThan(100);
    expect(disagreements(plan, open, (...at) => book.at(...at))).toEqual([]);
    expect(book.at('Checks', 8, 3)).toBe('A check is broken: see the sheet Checks');
    book.close();
  });

  test.each([
    ['taken away', null],
    ['given as words', 'cheap'],
    ['outside what is possible', -3],
  ])('spoils the whole cost when an input is %s in the workbook', (_, typed) => {
    const open = demonstration();
    const plan = planOf(open);
    const book = new ReckonedBook(plan);
    const { row, column } = changedInput(modelLayout(open, new SheetNames()), 'price.electricity', 0);
    book.set('Inputs', row, column, typed);
    const statement = plan.sheets.find(({ name }) => name === 'Statement')?.rows ?? [];
    const whole = statement.findIndex(([first]) => first?.kind === 'text' && first.text === 'Whole cost') + 1;

    expect(whole).toBeGreaterThan(0);
    expect(book.at('Statement', whole, 2)).toMatch(/^#/u);
    expect(book.at('Checks', 8, 3)).toBe('A check is broken: see the sheet Checks');
    book.close();
  });
});
