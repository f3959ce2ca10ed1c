import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { readEntry } from '../../../renderer/fields/read-entry.ts';
import { NumberStyle } from '../../../renderer/numbers/number-style.ts';

const locales = [
  ...['en-US', 'en-GB', 'en-IN', 'en-ZA', 'de-DE', 'de-CH', 'de-AT', 'fr-FR', 'fr-CA', 'es-ES', 'es-MX', 'pt-BR'],
  ...['it-IT', 'nl-NL', 'sv-SE', 'fi-FI', 'nb-NO', 'da-DK', 'pl-PL', 'cs-CZ', 'hu-HU', 'tr-TR', 'ja-JP', 'id-ID'],
];

/** Plain digits as the engine writes them: no zeros in front, no minus on nothing. */
const figure = fc
  .tuple(fc.boolean(), fc.bigInt({ min: 0n, max: 99_999_999n }), fc.stringMatching(/^\d{0,6}$/u))
  .map(([isNegative, whole, fraction]) => {
    const digits = fraction === '' ? String(whole) : `${whole}.${fraction}`;
    return isNegative && /[1-9]/u.test(digits) ? `-${digits}` : digits;
  });

describe('what is shown and typed again', () => {
  it.each(locales)('%s: a figure in a slot, typed as it stands there, is the same figure', (locale) => {
    const numbers = new NumberStyle(locale, 'EUR');
    fc.assert(
      fc.property(figure, (digits) => {
        expect(readEntry(numbers.typing(digits), numbers.decimalMark)).toEqual({ kind: 'read', typed: digits });
      }),
    );
  });

  it.each(locales)(
    '%s: a figure copied from the page is the same figure, or asked about and among the choices',
    (locale) => {
      const numbers = new NumberStyle(locale, 'EUR');
      fc.assert(
        fc.property(figure, (digits) => {
          const reading = readEntry(numbers.digits(digits), numbers.decimalMark);
          if (reading.kind === 'either') expect(reading.choices.map(({ typed }) => typed)).toContain(digits);
          else expect(reading).toEqual({ kind: 'read', typed: digits });
        }),
      );
    },
  );
});
