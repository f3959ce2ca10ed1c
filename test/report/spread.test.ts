import { describe, expect, it } from 'vitest';
import { type Amount, type OpenCase, type Spread, changeInput, restoreDefault, spreadOf } from '../../src/index.ts';
import { Decimal } from '../../src/kernel/evaluate/decimal-settings.ts';
import { areAlike } from '../../src/study/rounding.ts';
import { demonstration, valueOf } from '../examples/demonstration.ts';
import { randomOpenCase, shakenDemonstration } from './random-open-case.ts';

const columns = ['shownPerTonne', 'shownPerYear'] as const;
const pages = ['base', 'with', 'difference'] as const;
const shownSum = (amounts: readonly (Amount | null | undefined)[], column: (typeof columns)[number]): string =>
  Decimal.sum(0, ...amounts.map((amount) => amount?.[column] ?? '0')).toFixed(2);

const totalOf = (spread: Spread, page: (typeof pages)[number]): Amount =>
  page === 'difference' ? spread.difference : spread[page].total;

const opened: readonly (readonly [string, () => OpenCase])[] = [
  ['the demonstration case', demonstration],
  ...[71, 72, 73, 74, 75, 76].map((seed) => [`shaken, seed ${String(seed)}`, () => shakenDemonstration(seed)] as const),
  ...[81, 82, 83, 84, 85, 86].map((seed) => [`random, seed ${String(seed)}`, () => randomOpenCase(seed)] as const),
];

describe.each(opened)('the spread of %s', (_, open) => {
  const given = open();
  const spread = spreadOf(given);

  it('has groups that add up to the total, and rows that add up to the group, on both pages and in both columns', () => {
    for (const column of columns) {
      for (const page of pages) {
        expect(totalOf(spread, page)[column]).toMatch(/^-?\d+\.\d\d$/u);
        const groups = spread.groups.map((group) => group[page]);
        expect(shownSum(groups, column), `${page}, ${column}`).toBe(totalOf(spread, page)[column]);
        for (const group of spread.groups) {
          const rows = group.rows.map((row) => (page === 'difference' ? row.difference : row[page]?.amount));
          expect(shownSum(rows, column), `${group.id}, ${page}, ${column}`).toBe(group[page][column]);
        }
      }
    }
  });

  it('shows nothing that is a whole step away from what it is', () => {
    const { values } = given;
    const amounts = spread.groups.flatMap(({ base, with: other, rows }) => [
      base,
      other,
      ...rows.flatMap((row) => [row.base, row.with].flatMap((side) => side?.amount ?? [])),
    ]);
    for (const { perTonneId, perYearId, shownPerTonne, shownPerYear } of amounts) {
      const off = new Decimal(values.exact(perTonneId)).minus(shownPerTonne).abs();
      const offPerYear = new Decimal(values.exact(perYearId)).dividedBy(1e6).minus(shownPerYear).abs();
      expect(off.lessThan('0.01') && offPerYear.lessThan('0.01'), perTonneId).toBe(true);
    }
  });

  it('shows a difference as what a reader finds who takes one shown figure from the other', () => {
    const rows = spread.groups.flatMap((group) => group.rows);
    for (const row of rows)
      for (const column of columns)
        expect(row.difference[column]).toBe(
          new Decimal(row.with?.amount[column] ?? '0').minus(row.base?.amount[column] ?? '0').toFixed(2),
        );
  });

  it('shows lines that face each other and are equal alike, unless the sum of the page forbids it', () => {
    for (const { id, rows } of spread.groups) {
      const floor = (amount: Amount) =>
        new Decimal(given.values.exact(amount.perTonneId)).times(100).floor().dividedBy(100);
      const sides = rows.flatMap(({ base, with: side }) => {
        if (side === null) return [];
        const isWhole = floor(side.amount).equals(given.values.exact(side.amount.perTonneId));
        const isUp = !isWhole && floor(side.amount).lessThan(side.amount.shownPerTonne);
        const exact = given.values.exact(side.amount.perTonneId);
        const isEqual = base !== null && areAlike(given.values.exact(base.amount.perTonneId), exact);
        return [
          { isWhole, isUp, wished: isEqual ? base.amount.shownPerTonne : null, shown: side.amount.shownPerTonne },
        ];
      });
      const free = sides.filter(({ wished, isWhole }) => wished === null && !isWhole);
      // One that had to give way upwards shows that every free line was up already; downwards, that none was.
      for (const { wished, shown, isUp } of sides)
        if (wished !== null && wished !== shown)
          expect(
            free.every((each) => each.isUp === isUp),
            `${id}: ${wished} beside ${shown}`,
          ).toBe(true);
    }
  });

  it('has drivers that are inputs of the case, or results with their value and unit', () => {
    const sides = spread.groups.flatMap((group) => group.rows.flatMap((row) => [row.base, row.with]));
    const drivers = sides.flatMap((side) => side?.driver ?? []);
    expect(drivers.length).toBeGreaterThan(10);
    for (const driver of drivers) {
      if (driver.kind === 'input') expect(spread.inputs).toHaveProperty([driver.id]);
      else {
        expect(given.values.has(driver.id), driver.id).toBe(true);
        expect(driver.value).toBe(given.values.number(driver.id));
      }
    }
  });

  it('leaves out the lines that are nothing on both pages and that no input sets, and only those', () => {
    const shown = new Set(spread.groups.flatMap((group) => group.rows.map((row) => row.difference.perTonneId)));
    const inputs = new Set(Object.keys(spread.inputs));
    for (const row of given.model.difference.rows) {
      const matters = [row.base, row.with].some(
        (line) => line !== null && (given.values.number(line.perTonneId) !== 0 || inputs.has(line.driverId ?? '')),
      );
      expect(shown.has(row.perTonneId), row.perTonneId).toBe(matters);
    }
  });
});

describe('the spread of the demonstration case', () => {
  const open = demonstration();
  const spread = spreadOf(open);
  const rows = spread.groups.flatMap((group) => group.rows);

  it('shows every facing line that is equal alike', () => {
    const equal = rows.filter(({ base, with: other }) =>
      areAlike(
        base === null ? '' : open.values.exact(base.amount.perTonneId),
        other === null ? '' : open.values.exact(other.amount.perTonneId),
      ),
    );
    expect(equal.length).toBeGreaterThan(8);
    for (const { key, base, with: other } of equal)
      expect(other?.amount.shownPerTonne, key).toBe(base?.amount.shownPerTonne);
  });

  it('calls a route recovered that uses any recovered paper, and says what is done to its stock', () => {
    expect([spread.base.kind, spread.base.steps]).toEqual(['virgin', 'Slush, refine, screen']);
    expect([spread.with.kind, spread.with.steps]).toEqual(['recovered', 'Pulp, clean, screen']);
  });

  it('lists every input of the case with its figure, range, source and default', () => {
    expect(Object.keys(spread.inputs)).toEqual(open.model.graph.inputs.map(({ id }) => id));
    expect(spread.inputs['price.electricity']).toMatchObject({
      value: '0.118',
      unit: 'EUR/kWh',
      touched: true,
      status: 'invented',
      source: 'Demonstration',
      usual: open.model.graph.inputs.find(({ id }) => id === 'price.electricity')?.usual.value,
    });
    expect(spread.inputs['product.moisture']).toMatchObject({ value: '8', unit: '%', touched: false, usual: null });
  });

  it('names its laws and its warnings in words, and where a warning leads', () => {
    expect(spread.checks.map(({ label }) => label)).toEqual(
      expect.arrayContaining(['Mass closes', 'Machine balance closes', 'Costs add up', 'Difference adds up']),
    );
    expect(spread.checks.filter(({ kept, label }) => !kept || label === '')).toEqual([]);
    expect(spread.warnings.map(({ sentence, about }) => [sentence, about])).toContainEqual([
      'General inflation: 0 % is outside what is usual, 1 to 4.',
      'capital.inflation',
    ]);
  });

  it('keeps a line that is nothing on both pages while an input sets it, so that there is a place to give it', () => {
    const without = valueOf(changeInput(open, 'recovered.capital', '0'));
    const capital = spreadOf(without)
      .groups.flatMap((group) => group.rows)
      .find(({ key }) => key === 'capital.capital');

    expect([capital?.base?.amount.perTonne, capital?.with?.amount.perTonne]).toEqual([0, 0]);
    expect(capital?.with?.driver).toEqual({ kind: 'input', id: 'recovered.capital' });
  });

  it('shows what can be worked out beside what cannot', () => {
    const gap = spreadOf(valueOf(restoreDefault(open, 'recovered.mixed.share')));

    expect(gap.base.total).toEqual(spread.base.total);
    expect([gap.with.total.shownPerTonne, gap.difference.shownPerTonne, gap.difference.shownPerYear]).toEqual([
      '',
      '',
      '',
    ]);
    const capital = gap.groups.flatMap((group) => group.rows).find(({ key }) => key === 'capital.capital');
    expect(capital?.with?.amount.shownPerTonne).toBe('55.98');
    expect(gap.groups.find(({ id }) => id === 'fibre')?.with.shownPerTonne).toBe('');
  });
});
