import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { compare, spreadOf, uncertainty } from '../../src/index.ts';
import { workOut } from '../../src/study/open-case.ts';
import { conditionPhrase } from '../../src/wording/condition-phrase.ts';
import type { Cell, SheetPlan, WorkbookPlan } from '../../src/workbook/plan.ts';
import { programVersion } from '../../src/workbook/program-version.ts';
import { workbookPlan } from '../../src/workbook/workbook-plan.ts';
import { wasteCodeCaution } from '../../src/wording/waste-code-phrase.ts';
import { demonstration, valueOf } from '../examples/demonstration.ts';
import { planCase } from './support/book-cases.ts';
import { formulasOf } from './support/disagreements.ts';
import { planOf } from './support/plan-of.ts';

const open = demonstration();
const plan = planOf(open);
const withPlan = planOf(planCase());

const sheetOf = (book: WorkbookPlan, name: string): SheetPlan => {
  const found = book.sheets.find((sheet) => sheet.name === name);
  if (found === undefined) throw new Error(`No sheet "${name}"`);
  return found;
};
const wordsOf = (cell: Cell | undefined): string => (cell?.kind === 'text' ? cell.text : '');
const rowOf = (book: WorkbookPlan, sheet: string, label: string): readonly Cell[] => {
  const row = sheetOf(book, sheet).rows.find(([first]) => wordsOf(first).trim() === label);
  if (row === undefined) throw new Error(`No row "${label}" on ${sheet}`);
  return row;
};
const resultOf = (cell: Cell | undefined): unknown => (cell?.kind === 'formula' ? cell.result : undefined);

describe('the workbook of a case', () => {
  it('has every sheet a reader looks for', () => {
    const names = withPlan.sheets.map(({ name }) => name);

    expect(names).toEqual(
      expect.arrayContaining([
        'About',
        'Inputs',
        'Statement',
        'Bridge',
        'Residues and footprint',
        'Sensitivity',
        'Scenarios',
        'Uncertainty',
        'Investment',
        'Checks',
        'Sources',
        'Change log',
        'Calc common',
        'Calc recovered mixed',
        'Calc recovered costs',
      ]),
    );
    expect(plan.sheets.map(({ name }) => name)).not.toContain('Investment');
  });

  it('gives every named quantity and every input of the graph a cell of its own', () => {
    const { graph } = open.model;
    const named = graph.nodes.filter(({ declaration }) => declaration !== null);
    const places = new Set(plan.names.map(({ sheet, row, column }) => `${sheet} ${String(row)} ${String(column)}`));

    expect(places.size).toBe(plan.names.length);
    expect(plan.names.length).toBeGreaterThanOrEqual(named.length);
    for (const { sheet, row, column, name } of plan.names)
      expect(sheetOf(plan, sheet).rows[row - 1]?.[column - 1]?.kind, name).toMatch(/^(formula|number)$/u);
  });

  it('shows the verdict of the checks on every sheet', () => {
    for (const { name, rows } of plan.sheets)
      expect(rows[2]?.[0], name).toMatchObject({ kind: 'formula', formula: 'check_words', look: 'verdict' });
  });

  it('is written with every check kept', () => {
    for (const book of [plan, withPlan])
      expect(resultOf(sheetOf(book, 'Checks').rows[7]?.[2])).toBe('Every check is kept');
  });

  it('states every account as the program does', () => {
    const comparison = compare(open);
    comparison.difference.accounts.forEach((account, place) => {
      const row = sheetOf(plan, 'Statement').rows.find(([first]) => wordsOf(first) === `   ${account.label}`);
      const wanted = comparison.routes.flatMap((route) => [
        route.accounts[place]?.perTonne,
        route.accounts[place]?.perYear,
      ]);
      expect(row?.slice(1).map(resultOf), account.label).toEqual([...wanted, account.perTonne, account.perYear]);
    });
    expect(resultOf(rowOf(plan, 'Statement', 'Whole cost')[5])).toBe(comparison.difference.perTonne);
  });

  it('ends its bridge at the whole cost of the other route', () => {
    const whole = compare(open).routes[1]?.totals.costPerTonne;

    expect(resultOf(rowOf(plan, 'Bridge', 'Whole cost at the end')[5])).toBeCloseTo(whole ?? NaN, 9);
  });

  it('puts a waste code beside every residue stream, and says what such codes are worth', () => {
    const { rows } = sheetOf(plan, 'Residues and footprint');
    const codes = rows.flatMap((row) => row.map(wordsOf)).filter((words) => words.startsWith('Waste code '));

    expect(codes.length).toBeGreaterThanOrEqual(compare(open).routes.flatMap(({ residues }) => residues).length);
    expect(rows.some(([first]) => wordsOf(first) === wasteCodeCaution)).toBe(true);
  });

  it('says on what condition its difference holds', () => {
    const phrase = conditionPhrase(spreadOf(open, null));

    expect(phrase).not.toBe('');
    expect(wordsOf(rowOf(plan, 'About', 'Holds')[1])).toBe(`${phrase}.`);
  });

  it('holds measured figures beside computed ones where there are any', () => {
    const actuals = [
      { result: 'recovered.electricity.total', value: '700', unit: 'kWh/t', period: '2025', source: 'Meter' },
    ];
    const measured = planOf(valueOf(workOut({ ...open.content, actuals })));
    const row = sheetOf(measured, 'Measured').rows.find((cells) => wordsOf(cells.at(-1)) === 'Meter');

    expect(row?.[4]).toMatchObject({ kind: 'number', value: 700 });
    expect(row?.[1]).toMatchObject({ kind: 'formula', formula: 'recovered_electricity_total' });
    expect(plan.sheets.map(({ name }) => name)).not.toContain('Measured');
  });

  // 2 and 3 are exponents, 12 months, 365 days, 40 the length of a bar; 0 and 1 are nothing and the whole.
  it('has no number in a formula that could be another', () => {
    const odd = formulasOf(withPlan).flatMap(({ cell, sheet }) => {
      const bare = cell.formula
        .replace(/"[^"]*"/gu, '')
        .replace(/'[^']*'!/gu, '')
        .replace(/\b[A-Za-z_$][A-Za-z0-9_$]*/gu, '');
      const numbers = bare.match(/\d+(\.\d+)?/gu) ?? [];
      return numbers.filter((digits) => digits.includes('.')).map((digits) => `${sheet}: ${digits} in ${cell.formula}`);
    });

    expect(odd).toEqual([]);
  });

  // ECMA-376 of 2006 has all of these; none is newer than 2010.
  it('uses only functions that every spreadsheet has', () => {
    const used = new Set(formulasOf(withPlan).flatMap(({ cell }) => cell.formula.match(/[A-Z]+(?=\()/gu) ?? []));

    expect([...used].sort()).toEqual([
      'ABS',
      'AND',
      'COUNT',
      'COUNTA',
      'COUNTIF',
      'IF',
      'ISNUMBER',
      'MAX',
      'MIN',
      'NA',
      'NPV',
      'REPT',
      'ROUND',
      'ROWS',
      'SUM',
    ]);
  });

  it('keeps formulas short enough to read', () => {
    const lengths = formulasOf(plan).map(({ cell }) => cell.formula.length);

    expect(Math.max(...lengths)).toBeLessThan(8192);
    expect(lengths.filter((length) => length > 500).length / lengths.length).toBeLessThan(0.01);
  });

  it('locks everything but the figures of the inputs, the key and the lines of the log', () => {
    const open = plan.sheets.filter(({ rows }) => rows.some((row) => row.some((cell) => cell.kind === 'entry')));

    expect(open.map(({ name }) => name)).toEqual(['About', 'Inputs', 'Change log']);
  });

  it('says which version of the program wrote it', () => {
    const about = JSON.parse(readFileSync('package.json', 'utf8')) as { version: string };

    expect(about.version).toBe(programVersion);
    expect(wordsOf(rowOf(plan, 'About', 'Made by')[1])).toContain(programVersion);
  });

  it('tells how the difference spreads when trials were drawn, and says so when none were', () => {
    const trials = uncertainty(open, 'difference.total', { trials: 1024 });
    const drawn = workbookPlan(open, { today: null, trials, pictures: [] });

    expect(rowOf(drawn, 'Uncertainty', 'Trials')[1]).toMatchObject({ value: 1024 });
    expect(sheetOf(plan, 'Uncertainty').rows.some(([first]) => wordsOf(first) === 'No trials were drawn.')).toBe(true);
  });
});

describe('the plan of an investment', () => {
  const { rows } = sheetOf(withPlan, 'Investment');
  /** The formula of each year as it looks from its own column. */
  const patterns = (label: string): readonly string[] =>
    (rows.find(([first]) => wordsOf(first) === label) ?? []).slice(2).flatMap((cell, year) => {
      if (cell.kind !== 'formula') return [];
      return [
        cell.formula.replace(
          /(?<![A-Za-z_])([A-Z]{1,2})(?=\d+\b)/gu,
          (letters) => `[${String(columnOf(letters) - year)}]`,
        ),
      ];
    });

  it('has one formula for all years of the cash flow', () => {
    expect(new Set(patterns('Cash flow')).size).toBe(1);
    expect(patterns('Cash flow')).toHaveLength(planCase().content.investment!.years + 1);
  });

  it.each(['Cash flow so far', 'Present value'])('has one formula for all years but the first of: %s', (label) => {
    expect(new Set(patterns(label).slice(2)).size).toBe(1);
  });
});

function columnOf(letters: string): number {
  return Array.from(letters).reduce((sum, letter) => sum * 26 + letter.charCodeAt(0) - 64, 0);
}
