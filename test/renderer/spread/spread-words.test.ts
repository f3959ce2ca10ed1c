import { describe, expect, it } from 'vitest';
import { NumberStyle } from '../../../renderer/numbers/number-style.ts';
import { cheaperRoute } from '../../../renderer/screens/spread/cheaper-route.ts';
import { dearerNames } from '../../../renderer/screens/spread/dearer-names.ts';
import { foldScale } from '../../../renderer/screens/spread/fold-scale.ts';
import { lettersThatFit } from '../../../renderer/screens/spread/letters-that-fit.ts';
import { rowSummary } from '../../../renderer/screens/spread/row-summary.ts';
import { rowsThatFit } from '../../../renderer/screens/spread/rows-that-fit.ts';
import type { Amount, Spread, SpreadSide } from '../../../src/index.ts';
import { demonstrationSpread } from '../open-demonstration.ts';

const spread = demonstrationSpread();
const numbers = new NumberStyle('en-GB', 'EUR');
const amount = (shownPerTonne: string): Amount => ({
  perTonneId: 'a',
  perYearId: 'b',
  perTonne: shownPerTonne === '' ? Number.NaN : Number(shownPerTonne),
  perYear: 0,
  shownPerTonne,
  shownPerYear: '0.00',
});
const side = (label: string, shown: string): SpreadSide => ({ label, amount: amount(shown), driver: null });
const withDifference = (shown: string): Spread => ({ ...spread, difference: amount(shown) });

describe('the words of the spread', () => {
  it('name the route that costs less, so that nobody has to read a sign', () => {
    expect(cheaperRoute(withDifference('-0.01'))?.id).toBe('recovered');
    expect(cheaperRoute(withDifference('0.01'))?.id).toBe('virgin');
    expect(cheaperRoute(withDifference('0.00'))).toBeNull();
    expect(cheaperRoute(withDifference(''))).toBeNull();
  });

  it('sum a row up in one sentence for those who hear it', () => {
    const row = {
      key: 'k',
      base: side('Kraft pulp', '454.16'),
      with: side('Office paper', '329.84'),
      difference: amount('-124.32'),
    };

    expect(rowSummary(spread, row, numbers)).toBe(
      'Kraft pulp 454.16, office paper 329.84, recovered middle ply 124.32 less.',
    );
  });

  it('sum up a row that one page does not have, or that cannot be worked out', () => {
    const row = { key: 'k', base: null, with: side('Wire sold', '-1.15'), difference: amount('-1.15') };
    const lacking = { key: 'k', base: side('Steam', ''), with: side('Steam', '7.00'), difference: amount('') };

    expect(rowSummary(spread, row, numbers)).toBe('Wire sold \u22121.15, recovered middle ply 1.15 less.');
    expect(rowSummary(spread, lacking, numbers)).toBe('Steam not yet known, steam 7.00, difference not yet known.');
  });

  it('say to which side a bar of the fold leans, by place where both routes are of one kind', () => {
    expect(dearerNames(spread)).toEqual(['virgin dearer', 'recovered dearer']);
    expect(dearerNames({ ...spread, base: { ...spread.base, kind: 'recovered' } })).toEqual([
      'left dearer',
      'right dearer',
    ]);
  });
});

describe('the measures of the spread', () => {
  it('give every bar of the fold one scale, with room left at the longest', () => {
    const scale = foldScale(spread.groups);
    const lengths = spread.groups.flatMap(({ difference, rows }) => [
      scale(difference.perTonne),
      ...rows.map((row) => scale(row.difference.perTonne)),
    ]);

    expect(Math.max(...lengths)).toBeCloseTo(90, 9);
    expect(scale(Number.NaN)).toBe(0);
    expect(scale(-20) / scale(10)).toBeCloseTo(2, 9);
  });

  it('let a laptop of 1366 by 690 show sixteen rows', () => {
    // 690 less bars, borders, heads and bridge leaves 418 pixels (measured in the window).
    expect(rowsThatFit(418, 1366)).toBe(16);
    expect(rowsThatFit(0, 1366)).toBe(0);
  });

  it('let more letters of a name stand in a wider column', () => {
    expect(lettersThatFit(135, 13.5)).toBeLessThan(lettersThatFit(235, 13.5));
    expect(lettersThatFit(0, 13.5)).toBe(0);
  });
});
