import ExcelJS from 'exceljs';
import { beforeAll, describe, expect, it } from 'vitest';
import { compare, spreadOf } from '../../src/index.ts';
import type { Cell } from '../../src/workbook/plan.ts';
import { statementPlan } from '../../src/workbook/statement-plan.ts';
import { writeXlsx } from '../../src/workbook/write-xlsx.ts';
import { demonstration } from '../examples/demonstration.ts';

const open = demonstration();
const comparison = compare(open);
const plan = statementPlan(comparison, spreadOf(open));
const book = new ExcelJS.Workbook();

beforeAll(async () => {
  await book.xlsx.load((await writeXlsx(plan)).buffer as ArrayBuffer);
});

const valueIn = (sheet: string, row: number, column: number): unknown =>
  book.getWorksheet(sheet)?.getCell(row, column).value;
const rowOf = (sheet: string, label: string): number => {
  const rows = plan.sheets.find(({ name }) => name === sheet)?.rows ?? [];
  return rows.findIndex(([first]) => first?.kind === 'text' && first.text === label) + 1;
};

describe('the workbook of a comparison', () => {
  it('has three sheets', () => {
    expect(book.worksheets.map(({ name }) => name)).toEqual(plan.sheets.map(({ name }) => name));
  });

  it('holds every cell of the plan in its place', () => {
    const held = (cell: Cell): unknown =>
      cell.kind === 'empty' ? null : cell.kind === 'number' ? cell.value : cell.text;
    let numbers = 0;
    for (const { name, rows } of plan.sheets)
      rows.forEach((row, r) => {
        row.forEach((cell, c) => {
          expect(valueIn(name, r + 1, c + 1) ?? null, `${name}, row ${String(r + 1)}, column ${String(c + 1)}`).toBe(
            held(cell),
          );
          if (cell.kind === 'number') numbers += 1;
        });
      });
    expect(numbers).toBeGreaterThan(100);
  });

  it('states every account of every route, per tonne and per year, at full precision', () => {
    comparison.difference.accounts.forEach((account, place) => {
      const row = rowOf('Statement', account.label);
      const wanted = [
        ...comparison.routes.flatMap((route) => [route.accounts[place]?.perTonne, route.accounts[place]?.perYear]),
        account.perTonne,
        account.perYear,
      ];
      expect(
        wanted.map((_, at) => valueIn('Statement', row, at + 2)),
        account.label,
      ).toEqual(wanted);
    });
    const last = rowOf('Statement', 'Whole cost');
    expect(valueIn('Statement', last, 2)).toBe(comparison.routes[0]?.totals.costPerTonne);
    expect(valueIn('Statement', last, 7)).toBe(comparison.difference.perYear);
  });

  it('states energy, water, purchases, yields and residues of every route', () => {
    const sheet = book.getWorksheet('Quantities');
    const found = new Set<unknown>();
    sheet?.eachRow((row) => found.add(row.getCell(2).value));
    for (const { energy, water, purchased, lines, residues } of comparison.routes)
      for (const value of [
        energy.electricity,
        energy.heat,
        water.fresh,
        water.effluent,
        ...purchased.map(({ asReceived }) => asReceived),
        ...lines.map((line) => line.yield),
        ...residues.map(({ wet }) => wet),
      ])
        expect(found.has(value), String(value)).toBe(true);
  });

  it('says what it holds, in which money, of which year, and what to look at', () => {
    expect(valueIn('About', 1, 1)).toBe(open.content.title);
    expect(valueIn('About', rowOf('About', 'Currency'), 2)).toBe('EUR');
    expect(valueIn('About', rowOf('About', 'Prices of'), 2)).toBe('2024');
    const warnings = spreadOf(open).warnings.map(({ sentence }) => sentence);
    const start = rowOf('About', 'To look at');
    expect(warnings.map((_, at) => valueIn('About', start + 1 + at, 1))).toEqual(warnings);
  });

  it('leaves a number that cannot be worked out empty', () => {
    const broken = { ...comparison, difference: { ...comparison.difference, perTonne: NaN, perYear: NaN } };
    const statement = statementPlan(broken, spreadOf(open)).sheets.find(({ name }) => name === 'Statement');

    expect(statement?.rows.at(-1)?.slice(-2)).toEqual([{ kind: 'empty' }, { kind: 'empty' }]);
  });
});
