import { describe, expect, it } from 'vitest';
import {
  type OpenCase,
  changeInput,
  compare,
  editStructure,
  formatNumber,
  restoreDefault,
  spreadOf,
} from '../../src/index.ts';
import { statementPage } from '../../src/report/statement-page.ts';
import { workOut } from '../../src/study/open-case.ts';
import { demonstration, valueOf } from '../examples/demonstration.ts';

const open = demonstration();
const pageOf = (from: OpenCase, locale = 'en'): string => statementPage(compare(from), spreadOf(from), locale);
const page = pageOf(open);
const lines = page.split('\n');
const line = (start: string): string => lines.find((each) => each.trim().startsWith(start)) ?? '';
const cells = (text: string): readonly string[] => text.trim().split(/ {2,}/u);

describe('the page of a comparison', () => {
  it('says what is compared: product, moisture, tonnes, money and year of prices', () => {
    expect(lines.slice(0, 2)).toEqual([
      open.content.title,
      '1 t of three-ply carton board, 320 g/m² at 8 % moisture; 96,000 t a year; money in EUR, prices of 2024',
    ]);
  });

  it('prints every group and every row of the spread with its shown figures', () => {
    const spread = spreadOf(open);
    const money = (digits: string, sign = false) => formatNumber(digits, { locale: 'en', decimals: 2, sign });
    const printed = lines.map((each) => cells(each).join(' | '));
    for (const group of spread.groups) {
      const { base, with: other, difference } = group;
      expect(printed).toContain(
        [
          group.label,
          money(base.shownPerTonne),
          money(other.shownPerTonne),
          money(difference.shownPerTonne, true),
          money(difference.shownPerYear, true),
        ].join(' | '),
      );
      for (const row of group.rows) {
        const sides = [row.base, row.with].flatMap((side) => (side === null ? [] : [money(side.amount.shownPerTonne)]));
        const label = row.with?.label ?? row.base?.label ?? '';
        const rest = [...sides, money(row.difference.shownPerTonne, true), money(row.difference.shownPerYear, true)];
        const matching = printed.filter((each) => each.includes(label) && each.endsWith(rest.join(' | ')));
        expect(matching.length, `${label}: ${rest.join(' ')}`).toBeGreaterThan(0);
      }
    }
  });

  it('ends the ledger with the whole, and says in a sentence what the difference is', () => {
    expect(cells(line('Whole cost'))).toEqual(['Whole cost', '1,042.85', '982.49', '\u221260.36', '\u22125.79']);
    expect(page).toContain(
      'If both make the same product (not confirmed), Recovered middle ply costs 60.36 EUR a tonne less than Virgin middle ply: 5.79 million a year.',
    );
  });

  it('says more where the second route costs more, and the same where nothing separates them', () => {
    const dear = valueOf(changeInput(open, 'recovered.labour', '20000000'));
    expect(pageOf(dear)).toMatch(/Recovered middle ply costs [\d.,]+ EUR a tonne more than Virgin middle ply/u);

    const [virgin] = open.content.routes;
    const same = valueOf(workOut({ ...open.content, compare: { base: virgin!.id, with: virgin!.id } }));
    expect(pageOf(same)).toContain('Virgin middle ply costs the same as Virgin middle ply, to the cent.');
  });

  it('puts energy, water, purchases, yields and residues below', () => {
    const [virgin, recovered] = compare(open).routes;

    expect(cells(line('Electricity, kWh/t')).slice(1)).toEqual([
      String(Math.round(virgin?.energy.electricity ?? NaN)),
      String(Math.round(recovered?.energy.electricity ?? NaN)),
    ]);
    expect(cells(line('Yield, Recovered middle ply: Mixed papers and boards, %'))[1]).toBe(
      ((recovered?.lines.at(-1)?.yield ?? NaN) * 100).toFixed(1),
    );
    expect(cells(line('Recovered middle ply: Coarse screen rejects')).at(-1)).toBe('Outside incineration, Own boiler');
    expect(page).not.toContain('Virgin middle ply: Coarse screen rejects');
  });

  it('leaves out destinations that get nothing', () => {
    const toBoiler = valueOf(changeInput(open, 'residue.coarse.to.boiler', '100'));
    const row = pageOf(toBoiler)
      .split('\n')
      .find((each) => each.startsWith('Recovered middle ply: Coarse screen rejects'));

    expect(cells(row ?? '').at(-1)).toBe('Own boiler');
  });

  it('says which routes are compared where there are more, and what the others cost', () => {
    expect(page).not.toContain('Not compared');
    const more = valueOf(editStructure(open, { kind: 'duplicate route', route: 'recovered' }));

    expect(pageOf(more)).toContain(
      'Compared above are Virgin middle ply and Recovered middle ply. Not compared: Recovered middle ply (copy) 982.49 EUR a tonne.',
    );
  });

  it('closes with the laws and what to look at', () => {
    expect(page).toMatch(/^yes: mass closes; yes: machine balance closes; /mu);
    expect(page).toContain('  General inflation: 0 % is outside what is usual, 1 to 4.\n');
    expect(page.endsWith('\n')).toBe(true);
  });

  it('writes numbers as a region does', () => {
    const german = pageOf(open, 'de-DE');

    expect(german).toContain('96.000 t a year');
    expect(german).toContain('1.042,85');
    expect(german).not.toMatch(/\d\.\d\d(?!\d)/u);
  });

  it('has columns that stand under one another', () => {
    const start = lines.findIndex((each) => each.startsWith('per tonne'));
    const end = lines.findIndex((each) => each.startsWith('Whole cost'));
    const ledger = lines.slice(start, end + 1);
    const width = ledger[1]?.length ?? 0;
    for (const each of ledger) expect(each.length, each).toBe(width);
  });

  it('says not yet where a figure is missing', () => {
    const gap = pageOf(valueOf(restoreDefault(open, 'recovered.mixed.share')));

    expect(gap).toContain('The difference cannot be worked out yet.');
    expect(gap).toMatch(/Whole cost +1,042\.85 +not yet +not yet +not yet/u);
    expect(gap).not.toMatch(/costs add up/u);
  });
});
