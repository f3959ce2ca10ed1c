import { describe, expect, it } from 'vitest';
import { compare, spreadOf } from '../../src/index.ts';
import { statementCsv } from '../../src/report/statement-csv.ts';
import type { Comparison } from '../../src/study/comparison.ts';
import { demonstration } from '../examples/demonstration.ts';

const open = demonstration();
const comparison = compare(open);
const spread = spreadOf(open);

/** Fields of comma-separated values as RFC 4180 has them: quotes around, quotes doubled inside. */
function fieldsOf(text: string, separator: string): string[][] {
  const rows: string[][] = [[]];
  let at = 0;
  while (at < text.length) {
    let field = '';
    if (text[at] === '"') {
      for (at += 1; text[at] !== '"' || text[at + 1] === '"'; at += 1) {
        if (text[at] === '"') at += 1;
        field += text[at] ?? '';
      }
      at += 1;
    } else {
      while (at < text.length && text[at] !== separator && text[at] !== '\r') field += text[at++] ?? '';
    }
    rows.at(-1)?.push(field);
    if (text[at] === '\r') {
      expect(text[at + 1]).toBe('\n');
      at += 2;
      if (at < text.length) rows.push([]);
    } else at += 1;
  }
  return rows;
}

const csvOf = (locale: string, from = comparison) => statementCsv(from, spread, locale).replace(/^\uFEFF/u, '');
/** The rows of figures: those under the total are remarks. */
const figuresOf = (rows: string[][]) => rows.slice(0, rows.findIndex(([id]) => id === 'total') + 1);
const withLabel = (label: string): Comparison => ({
  ...comparison,
  routes: comparison.routes.map((route, place) => (place === 0 ? { ...route, label } : route)),
});

describe('the statement as comma-separated values', () => {
  it('begins with a byte-order mark, so that a spreadsheet reads it as UTF-8', () => {
    expect(statementCsv(comparison, spread, 'en').codePointAt(0)).toBe(0xfeff);
    expect(statementCsv(comparison, spread, 'en').lastIndexOf('\uFEFF')).toBe(0);
  });

  it.each([
    { locale: 'en', separator: ',', mark: '.' },
    { locale: 'de-CH', separator: ',', mark: '.' },
    { locale: 'de-AT', separator: ';', mark: ',' },
    { locale: 'fr', separator: ';', mark: ',' },
    { locale: 'fi', separator: ';', mark: ',' },
  ])('separates with "$separator" and writes decimals with "$mark" in $locale', ({ locale, separator, mark }) => {
    const [heads, first] = fieldsOf(csvOf(locale), separator);

    expect(heads?.slice(0, 3)).toEqual(['Account', 'Label', 'Virgin middle ply, EUR/t']);
    expect(first?.slice(0, 2)).toEqual(['fibre', 'Fibre']);
    expect(first?.[2]).toBe(String(comparison.routes[0]?.accounts[0]?.perTonne).replace('.', mark));
  });

  it('holds every number of the comparison with all its digits, in its row and column', () => {
    const [heads, ...rows] = figuresOf(fieldsOf(csvOf('en'), ','));
    const numbers = rows.map((row) => row.slice(2).map(Number));
    const { routes, difference } = comparison;

    expect(heads).toHaveLength(2 + 2 * (routes.length + 1));
    expect(numbers).toEqual([
      ...difference.accounts.map((account, place) => [
        ...routes.flatMap((route) => [route.accounts[place]?.perTonne, route.accounts[place]?.perYear]),
        account.perTonne,
        account.perYear,
      ]),
      [
        ...routes.flatMap(({ totals }) => [totals.costPerTonne, totals.costPerYear]),
        difference.perTonne,
        difference.perYear,
      ],
    ]);
    expect(rows.map(([id]) => id)).toEqual([...difference.accounts.map(({ id }) => id), 'total']);
  });

  it('leaves negative numbers numbers: no apostrophe and no typographic minus', () => {
    expect(comparison.difference.perTonne).toBeLessThan(0);
    expect(
      figuresOf(fieldsOf(csvOf('en'), ','))
        .at(-1)
        ?.at(-2),
    ).toBe(String(comparison.difference.perTonne));
  });

  it.each(['=1+1', '+49 route', '-dash', '@sum', '\tindented'])(
    'makes the label "%s" harmless to a spreadsheet',
    (label) => {
      expect(fieldsOf(csvOf('en', withLabel(label)), ',')[0]?.[2]).toBe(`'${label}, EUR/t`);
    },
  );

  it.each([
    { label: 'A, B', quoted: '"A, B, EUR/t"' },
    { label: 'said "so"', quoted: '"said ""so"", EUR/t"' },
    { label: 'two\nlines', quoted: '"two\nlines, EUR/t"' },
  ])('quotes $label', ({ label, quoted }) => {
    const csv = csvOf('en', withLabel(label));

    expect(csv).toContain(quoted);
    expect(fieldsOf(csv, ',')[0]?.[2]).toBe(`${label}, EUR/t`);
  });

  it('quotes a semicolon where semicolons separate, and only there', () => {
    expect(csvOf('de', withLabel('A; B'))).toContain('"A; B, EUR/t"');
    expect(fieldsOf(csvOf('de', withLabel('A; B')), ';')[0]?.[2]).toBe('A; B, EUR/t');
  });

  it('leaves a number that cannot be worked out empty', () => {
    const broken = { ...comparison, difference: { ...comparison.difference, perTonne: NaN } };

    expect(
      figuresOf(fieldsOf(csvOf('en', broken), ','))
        .at(-1)
        ?.at(-2),
    ).toBe('');
  });

  it('says under the total on what condition it holds, and what to look at', () => {
    const rows = fieldsOf(csvOf('en'), ',');
    const remarks = rows.slice(figuresOf(rows).length);

    expect(remarks[0]?.slice(0, 2)).toEqual(['condition', 'If both make the same product (not confirmed).']);
    expect(remarks.slice(1).map(([kind, sentence]) => [kind, sentence])).toEqual(
      spread.warnings.map(({ sentence }) => ['to look at', sentence]),
    );
    expect(remarks.length).toBeGreaterThan(1);
  });

  it('has the same number of fields in every row, and ends its last line', () => {
    const rows = fieldsOf(csvOf('en'), ',');

    expect(new Set(rows.map((row) => row.length))).toEqual(new Set([8]));
    expect(csvOf('en').endsWith('\r\n')).toBe(true);
  });
});
