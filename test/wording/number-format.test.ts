import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { type NumberForm, formatNumber } from '../../src/wording/number-format.ts';

const narrow = '\u202f';
const noBreak = '\u00a0';
const minus = '\u2212';

describe('a number', () => {
  it.each<{ value: number | string; form: NumberForm; shown: string }>([
    { value: 1042.852, form: { locale: 'en', decimals: 2 }, shown: '1,042.85' },
    { value: 1042.852, form: { locale: 'de-DE', decimals: 2 }, shown: '1.042,85' },
    { value: 1042.852, form: { locale: 'de-CH', decimals: 2 }, shown: '1\u2019042.85' },
    { value: 1042.852, form: { locale: 'fr-FR', decimals: 2 }, shown: `1${narrow}042,85` },
    { value: 1042.852, form: { locale: 'fi-FI', decimals: 2 }, shown: `1${noBreak}042,85` },
    { value: 1234567, form: { locale: 'en-IN', decimals: 0 }, shown: '12,34,567' },
    { value: -60.3598, form: { locale: 'en', decimals: 2 }, shown: `${minus}60.36` },
    { value: '-60.3598', form: { locale: 'sv-SE', decimals: 2 }, shown: `${minus}60,36` },
    { value: 0.1168295449, form: { locale: 'en', significant: 7 }, shown: '0.1168295' },
    { value: 96000, form: { locale: 'en', significant: 7 }, shown: '96,000' },
    { value: 17.06, form: { locale: 'en', decimals: 2, sign: true }, shown: '+17.06' },
    { value: -17.06, form: { locale: 'en', decimals: 2, sign: true }, shown: `${minus}17.06` },
    { value: 0, form: { locale: 'en', decimals: 2, sign: true }, shown: '0.00' },
    { value: 0.118, form: { locale: 'en' }, shown: '0.118' },
  ])('$value is written $shown ($form)', ({ value, form, shown }) => {
    // Swiss formats have either apostrophe, by the version of the locale data.
    expect(formatNumber(value, form).replace("'", '\u2019')).toBe(shown);
  });

  it.each(['en', 'de-CH', 'fr-FR', 'fi-FI', 'sv-SE', 'nb-NO', 'pl-PL', 'lt-LT'])(
    'that is nothing has no minus in %s',
    (locale) => {
      for (const value of [-0, -0.001, '-0.001', '-0.00', '-0'])
        for (const sign of [false, true])
          expect(formatNumber(value, { locale, decimals: 2, sign })).toMatch(/^0[.,]00$/u);
      expect(formatNumber(-0, { locale })).toBe('0');
      expect(formatNumber(-0, { locale, significant: 3 })).toBe('0');
    },
  );

  it('never has a hyphen for a minus, in any region', () => {
    for (const locale of [
      'en',
      'de',
      'fr',
      'it',
      'es',
      'pt',
      'sv',
      'nb',
      'fi',
      'pl',
      'he',
      'ar',
      'fa',
      'hi',
      'ja',
      'sl',
      'lt',
    ]) {
      const written = formatNumber(-12.5, { locale });
      expect(written, locale).not.toContain('-');
      expect(written, locale).toContain(minus);
    }
  });

  it('is written in the digits in which it is typed, in any region', () => {
    for (const locale of ['ar-EG', 'fa-IR', 'hi-IN-u-nu-deva', 'my-MM'])
      expect(formatNumber(1234.5, { locale, decimals: 1 }).replace(/[^\d]/gu, ''), locale).toBe('12345');
  });

  it('that cannot be worked out is "not yet"', () => {
    for (const value of [NaN, Infinity, -Infinity, ''])
      expect(formatNumber(value, { locale: 'en', decimals: 2 })).toBe('not yet');
  });
});

describe('digits given as text', () => {
  it('keep all their digits, however many', () => {
    const digits = '0.1322773573109311250000000000000012345';

    expect(formatNumber(digits, { locale: 'en' })).toBe(digits);
    expect(formatNumber(`-${digits}`, { locale: 'de' })).toBe(`${minus}${digits.replace('.', ',')}`);
    expect(formatNumber('123456789012345678901234567890', { locale: 'en' })).toBe(
      '123,456,789,012,345,678,901,234,567,890',
    );
  });

  it('are the same digits in the same order, apart from the marks between them', () => {
    const typed = fc
      .tuple(fc.bigInt({ min: 1n, max: 10n ** 25n }), fc.stringMatching(/^\d{0,39}[1-9]$/u), fc.boolean())
      .map(([whole, decimals, negative]) => `${negative ? '-' : ''}${String(whole)}.${decimals}`);
    const property = fc.property(typed, fc.constantFrom('en', 'de', 'fr', 'de-CH', 'fi'), (digits, locale) => {
      expect(formatNumber(digits, { locale }).replace(/[^\d]/gu, '')).toBe(digits.replace(/[^\d]/gu, ''));
    });
    fc.assert(property, { seed: 20261, numRuns: 200 });
  });

  it('are rounded where a form asks for it, without passing through floating point', () => {
    // As a floating-point number this would be 0.30000000000000004.
    expect(formatNumber('0.3000000000000000444', { locale: 'en' })).toBe('0.3000000000000000444');
    expect(formatNumber('9007199254740993', { locale: 'en', decimals: 0 })).toBe('9,007,199,254,740,993');
  });
});
