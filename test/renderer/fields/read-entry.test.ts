import { describe, expect, it } from 'vitest';
import { readEntry } from '../../../renderer/fields/read-entry.ts';

describe('an entry as typed into a slot', () => {
  it.each([
    ['472', '.', '472'],
    ['  472,50 ', ',', '472.50'],
    ['14 %', '.', '14 %'],
    ['14%', '.', '14 %'],
    ['0,12 €/kWh', ',', '0.12 €/kWh'],
    ['95kWh/t', '.', '95 kWh/t'],
    ['−20', '.', '-20'],
    ['-20,5 EUR/t', ',', '-20.5 EUR/t'],
    ['€ 472', '.', '472'],
    ['120 000 t', '.', '120000 t'],
    ['68+4.50', '.', '72.50'],
    ['68 + 4,50 €/t', ',', '72.50 €/t'],
  ])('"%s", decimals with "%s", goes to the engine as "%s"', (text, mark, typed) => {
    expect(readEntry(text, mark)).toEqual({ kind: 'read', typed });
  });

  it('that can be read in two ways is asked about, in the person’s own way of writing', () => {
    expect(readEntry('1.234 €/t', ',')).toEqual({
      kind: 'either',
      sentence: '1.234 can mean 1,234 or 1234. Which one?',
      choices: [
        { label: '1,234', typed: '1.234 €/t' },
        { label: '1234', typed: '1234 €/t' },
      ],
    });
  });

  it.each(['', '   ', 'cheap', '12 5', '5 / 0', '1,234 + 5'])('"%s" is told to be unreadable', (text) => {
    expect(readEntry(text, '.').kind).toBe('unreadable');
  });
});
