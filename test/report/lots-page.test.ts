import { describe, expect, test } from 'vitest';
import { lotsPage } from '../../src/report/lots-page.ts';
import { lotsView, type LotsView } from '../../src/report/lots-view.ts';
import { demonstration } from '../examples/demonstration.ts';

const open = demonstration();
const lots = open.content.lots!;
const view = lotsView(open, '2026-09-30', { ...lots, target: '975.5', creditRate: '5' })!;

const textOf = (withLimits: boolean, locale = 'en', of: LotsView = view): string =>
  JSON.stringify(lotsPage(of, { lot: 'brackwater', withLimits, locale }));

/** Everything that only the buyer should know, as it would be printed with none, one or two decimals. */
function secrets(locale: string): readonly string[] {
  const numbers = view.lots.flatMap(({ lot, walkAway, cost, worth, freight }) => [
    cost,
    walkAway.price,
    walkAway.virgin,
    walkAway.other,
    walkAway.target,
    ...(walkAway.low === null || walkAway.high === null ? [] : [walkAway.low, walkAway.high]),
    ...worth.flatMap(({ product, lot: whole }) => [product, whole]),
    ...(lot.id === 'brackwater' ? [] : [Number(lot.figures.price), freight]),
  ]);
  return [...numbers, view.virgin!.cost, view.today, 975.5]
    .filter((value) => Number.isFinite(value) && Math.abs(value) >= 30)
    .flatMap((value) =>
      [0, 1, 2].map((decimals) =>
        new Intl.NumberFormat(locale, { minimumFractionDigits: decimals, maximumFractionDigits: decimals }).format(
          value,
        ),
      ),
    );
}

const holds = (text: string, figure: string): boolean =>
  new RegExp(`(?<![\\d.,])${figure.replace(/[.\s]/gu, '\\$&')}(?![\\d]|[.,]\\d)`, 'u').test(text);

describe('the page for the merchant', () => {
  test.each(['en', 'de'])('holds no figure of the buyer’s limits, written as in %s', (locale) => {
    const text = textOf(false, locale);
    const found = secrets(locale).filter((figure) => holds(text, figure));

    expect(secrets(locale).length).toBeGreaterThan(30);
    expect(found).toEqual([]);
  });

  test('names its own lot only', () => {
    expect(textOf(false)).toContain('Brackwater Fibre');
    expect(textOf(false)).not.toMatch(/Nordmere|Tallow|Pyke/u);
    expect(textOf(false)).not.toContain(view.virgin!.label);
  });

  test('tells what was weighed, read and claimed', () => {
    const [lot] = lotsPage(view, { lot: 'brackwater', withLimits: false, locale: 'en' }).tables;

    expect(lot!.rows.map(([name]) => name)).toEqual([
      'Price asked',
      'Moisture',
      'Unusable material',
      'Tolerance of the grade',
      'Weighed',
      'Payable',
      'Claim for wet paper',
    ]);
  });

  test('says nothing of what the buyer reckons with where something was not read', () => {
    const [first, ...others] = lots.offers;
    const { moisture: _moisture, unusable: _unusable, ...unread } = first!;
    const of = lotsView(open, '2026-09-30', { ...lots, offers: [unread, ...others] })!;

    expect(of.lots[0]!.notes.map(({ kind }) => kind)).toEqual(
      expect.arrayContaining(['usual moisture', 'usual contents']),
    );
    expect(lotsPage(of, { lot: 'brackwater', withLimits: false, locale: 'en' }).notes.join(' ')).not.toContain(
      'is used',
    );
  });

  test('prints the buyer’s limits where the switch is on: every one of them is found then', () => {
    const text = textOf(true);

    for (const { walkAway, cost, lot } of view.lots) {
      expect(text).toContain(walkAway.price.toFixed(2));
      expect(text).toContain(cost.toFixed(2));
      expect(text).toContain(lot.label);
    }
  });
});
