import { describe, expect, it } from 'vitest';
import { isLonger, monthsBetween } from '../../../src/case/day.ts';
import { type OpenCase, changeInput, datedInputs } from '../../../src/index.ts';
import { freshnessCautions } from '../../../src/study/trust/freshness-cautions.ts';
import { freshnessOf } from '../../../src/study/trust/freshness.ts';
import { freshnessSentence } from '../../../src/wording/freshness-sentence.ts';
import { demonstration, valueOf } from '../../examples/demonstration.ts';
import { after } from '../edited.ts';

const open = demonstration();
const today = '2026-11-25';
const dated = (dates: Readonly<Record<string, string>>, from: OpenCase = open): OpenCase =>
  Object.entries(dates).reduce((before, [input, date]) => after({ kind: 'date input', input, date }, before), from);
const about = (from: OpenCase, id: string) => datedInputs(from, today).find((each) => each.id === id);
const sentences = (from: OpenCase, day: string | null = today): readonly string[] =>
  freshnessCautions(from, day).map(freshnessSentence);

describe('months between days', () => {
  it.each([
    ['2026-05-25', '2026-11-25', 6, false],
    ['2026-05-24', '2026-11-25', 6, true],
    ['2026-05-26', '2026-11-25', 5, false],
    ['2025-11-25', '2026-11-25', 12, true],
    ['2026-11-25', '2026-05-25', -6, false],
  ])('from %s to %s are %i whole ones; more than six: %s', (from, to, whole, isMore) => {
    expect(monthsBetween(from, to)).toBe(whole);
    expect(isLonger(from, to, 6)).toBe(isMore);
  });
});

// Common practice, no source: 6 months in a case (3 in a lot), 12 at most; the turn of the year; 3 years.
describe('how fresh a figure is', () => {
  it.each([
    ['pulp', '2026-05-25', 'in date'],
    ['pulp', '2026-05-24', 'amber'],
    ['recovered paper', '2025-11-25', 'amber'],
    ['recovered paper', '2025-11-24', 'red'],
    ['power', '2026-01-01', 'amber'],
    ['fuel and heat', '2024-01-01', 'red'],
    ['carbon price', '2026-11-01', 'in date'],
    ['exchange rate', '2026-11-26', 'ahead'],
    ['tax or fee', '2026-01-01', 'in date'],
    ['tax or fee', '2025-12-31', 'amber'],
    ['emission factor', '2023', 'in date'],
    ['emission factor', '2022', 'amber'],
    ['power', '', 'no date'],
  ] as const)('%s of %s is %s on 25 November 2026', (kind, date, wanted) => {
    expect(freshnessOf(kind, date, today)).toBe(wanted);
  });

  it('ends after three months for a lot that is being bought', () => {
    expect(freshnessOf('recovered paper', '2026-08-25', today, 'lot')).toBe('in date');
    expect(freshnessOf('recovered paper', '2026-08-24', today, 'lot')).toBe('amber');
  });

  it('is not told where nobody says what day it is', () => {
    expect(freshnessOf('pulp', '1999-01-01', null)).toBe('in date');
  });
});

describe('the dates of a case', () => {
  it('are asked of every price in use, every fee and tax, power, fuel and carbon', () => {
    const kinds = new Set(datedInputs(open, today).map(({ kind }) => kind));

    expect([...kinds].sort()).toEqual([
      'carbon price',
      'emission factor',
      'fuel and heat',
      'power',
      'pulp',
      'recovered paper',
      'tax or fee',
    ]);
  });

  it('are told as missing until they are given, once for all of them', () => {
    const told = sentences(open);

    expect(about(open, 'material.bskp.price')).toMatchObject({ freshness: 'no date', months: null, date: '' });
    expect(told.filter((sentence) => sentence.startsWith('No date is given for'))).toHaveLength(1);
    expect(told[0]).toMatch(/^No date is given for \d+ prices.*Bleached softwood kraft; Bleached hardwood kraft/u);
  });

  it('say of an old price how old it is, and of one beyond a year that nothing should rest on it', () => {
    const from = dated({ 'material.bskp.price': '2026-03-03', 'price.electricity': '2025-10-01' });

    expect(sentences(from)).toContain(
      'Bleached softwood kraft: price of 3 March 2026, 8 months ago; after 6 months a price of its kind is looked up again.',
    );
    expect(sentences(from)).toContain(
      'Electricity: price of 1 October 2025, 13 months ago: out of date. Nothing should rest on it before it is looked up again.',
    );
  });

  it('say nothing of ages where nobody says what day it is', () => {
    const from = dated({ 'material.bskp.price': '2006-03-03' });

    expect(freshnessCautions(from, null).filter(({ kind }) => kind === 'old figure')).toEqual([]);
    expect(freshnessCautions(from, today).filter(({ kind }) => kind === 'old figure')).toHaveLength(1);
  });

  it('of pulp and of recovered paper may lie three months apart and no more, the widest pair told', () => {
    const near = dated({ 'material.bskp.price': '2026-06-30', 'material.mixed.price': '2026-09-30' });
    const far = dated({ 'material.bhkp.price': '2026-04-30', 'material.supermarket.price': '2026-10-01' }, near);

    expect(freshnessCautions(near, today).map(({ kind }) => kind)).not.toContain('dates apart');
    expect(sentences(far)).toContain(
      'Prices of pulp (30 April 2026) and of recovered paper (1 October 2026) lie more than 5 months apart: they are of different markets.',
    );
  });

  it('go with the figure: another figure has no date until one is given', () => {
    const retyped = valueOf(changeInput(dated({ 'material.bskp.price': '2026-10-01' }), 'material.bskp.price', '650'));

    expect(about(retyped, 'material.bskp.price')?.date).toBe('');
    expect(
      about(valueOf(changeInput(open, 'material.bskp.price', '650', { date: '2026-10-01' })), 'material.bskp.price')
        ?.date,
    ).toBe('2026-10-01');
  });
});
