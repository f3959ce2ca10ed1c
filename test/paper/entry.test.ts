import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { type Entry, givenFigure, splitTyped } from '../../src/paper/entry.ts';
import { typedFigure } from '../support/typed-figure.ts';

function entryIn(unit: string, allowed: Entry['allowed'] = {}): Entry {
  return { id: 'some.input', label: 'Some input', unit, allowed };
}

/** The figure read, in the unit of the input; or the kind of problem. */
function read(typed: string, unit: string, allowed?: Entry['allowed']): string {
  const outcome = typedFigure(entryIn(unit, allowed), typed);
  return outcome.ok ? outcome.value : outcome.problems.map((problem) => problem.kind).join(', ');
}

describe('a figure as typed', () => {
  it.each([
    ['0.12 EUR/kWh', 'EUR/kWh', '0.12'],
    ['0.12', 'EUR/kWh', '0.12'],
    ['14 %', '%', '14'],
    ['14%', '%', '14'],
    ['0.14', '%', '0.14'],
    ['14 %', '1', '0.14'],
    ['0.14 1', '%', '14'],
    ['  7.5   ', 't/a', '7.5'],
    ['+5', 'EUR/t', '5'],
    ['-72', 'EUR/t', '-72'],
    ['\u221272 EUR/t', 'EUR/t', '-72'],
    ['1e3', 'EUR', '1000'],
    ['2.5E-2 EUR', 'EUR', '0.025'],
    ['46e6', 'EUR', '46000000'],
    ['0', 'EUR', '0'],
    ['007', 'EUR', '007'],
    // More digits than the reckoning carries stay as they were typed, in the input's own unit.
    ['1.23456789012345678901234567890123456789 EUR', 'EUR', '1.23456789012345678901234567890123456789'],
  ])('"%s" into %s is %s', (typed, unit, expected) => {
    expect(read(typed, unit)).toBe(expected);
  });

  it.each([
    ['0.1 MWh/bdt', 'kWh/bdt', '100'],
    ['95 kWh/bdt', 'kWh/bdt', '95'],
    ['118 EUR/MWh', 'EUR/kWh', '0.118'],
    ['120 €/wet t', 'EUR/wet-t', '120'],
    ['120 € / wet tonne', 'EUR/wet-t', '120'],
    ['85 €/t as received', 'EUR/t-ar', '85'],
    ['3 EUR/tonne', 'EUR/t', '3'],
    ['96000 t/year', 't/a', '96000'],
    ['8.6 m³/t', 'm3/t', '8.6'],
    ['8600 l/t', 'm3/t', '8.6'],
    ['250 g/gross t', 'kg/gt', '0.25'],
    ['56.1 kg CO2e/GJ', 'kgCO2e/GJ', '56.1'],
    ['67 EUR/t CO2e', 'EUR/tCO2e', '67'],
    ['0.25 €/kg COD', 'EUR/kgCOD', '0.25'],
    ['45 °C', 'C', '45'],
    ['$0.1/kWh', 'USD/kWh', '0.1'],
    ['US$ 0.1 per kWh', 'USD/kWh', '0.1'],
    ['-$5/t', 'USD/t', '-5'],
    ['\u2212€5/t', 'EUR/t', '-5'],
    ['£67/t CO2e', 'GBP/tCO2e', '67'],
    ['0.1 $/kWh', 'USD/kWh', '0.1'],
    ['30 EUR per GJ', 'EUR/GJ', '30'],
    // 36 EUR for 3.6 GJ.
    ['36 EUR/MWh-heat', 'EUR/GJ', '10'],
    ['0.036 EUR/kWh of heat', 'EUR/GJ', '10'],
    ['0.90718474 EUR/short ton', 'EUR/t', '1'],
    ['90.718474 EUR/short ton as received', 'EUR/t-ar', '100'],
    ['90.718474 EUR/bone-dry short ton', 'EUR/bdt', '100'],
    ['90.718474 EUR/air-dry short ton', 'EUR/adt', '100'],
    ['90.718474 EUR/wet short ton', 'EUR/wet-t', '100'],
    ['101.60469088 EUR/long ton as received', 'EUR/t-ar', '100'],
    ['101.60469088 $/gross long tons', 'USD/gt', '100'],

    ['3600 MJ/gt', 'GJ/gt', '3.6'],
    ['1 odt', 'bdt', '1'],
    // 24 h x 0.745699872 kW, and a short ton of 0.90718474 t.
    ['4 hpd/bdt', 'kWh/bdt', '71.587187712'],
    ['4 hpd/bdst', 'kWh/bdt', '78.91136673220495309477979093872324'],
    ['0.90718474 hpd/bdst', 'kWh/bdt', '17.896796928'],
    ['100 EUR/adst', 'EUR/adt', '110.2311310924387903614869006725135'],
    ['1 st', 't', '0.90718474'],
    ['1 GJ', 'MJ', '1000'],
  ])('"%s" is turned into %s exactly: %s', (typed, unit, expected) => {
    expect(read(typed, unit)).toBe(expected);
  });

  it.each([
    ['5 EUR/t', 'EUR/kWh'],
    ['5 kWh', 'GJ'],
    ['5 EUR/bdt', 'EUR/adt'],
    ['5 EUR/t', 'EUR/t-ar'],
    ['5 USD/t', 'EUR/t'],
    ['5 $/t', 'EUR/t'],
    ['5 %', 'EUR/t'],
    ['5 nonsense', 'EUR/t'],
    ['5 EUR//t', 'EUR/t'],
    ['5 EUR^999999999', 'EUR'],
    ['5 MWh^99', 'kWh'],
    ['1,234.5', 'EUR/t'],
    ['1 234', 'EUR/t'],
    ['0x10', 'EUR/t'],
    ['5.', 'EUR/t'],
  ])('"%s" is refused for an input in %s', (typed, unit) => {
    expect(read(typed, unit)).toBe('wrong unit');
  });

  it('is refused with the name of the input, the unit given and the unit wanted', () => {
    expect(typedFigure(entryIn('EUR/adt'), '700 EUR/bdt')).toEqual({
      ok: false,
      problems: [{ kind: 'wrong unit', id: 'some.input', label: 'Some input', given: 'EUR/bdt', wanted: 'EUR/adt' }],
    });
  });

  it.each(['', ' ', 'twelve', 'NaN', 'Infinity', '--5', '.5', 'EUR 5', '€5', '%', 'e5', '\u2212'])(
    'is no number when it is "%s"',
    (typed) => {
      expect(typedFigure(entryIn('EUR/t'), typed)).toEqual({
        ok: false,
        problems: [{ kind: 'not a number', id: 'some.input', given: typed }],
      });
    },
  );

  it.each(['5 ton', '5 tons', '5 EUR/ton', '5 hpd/ton', '5 EUR*a/tons'])(
    '"%s" is asked which ton it means',
    (typed) => {
      expect(typedFigure(entryIn('EUR/t'), typed)).toEqual({
        ok: false,
        problems: [{ kind: 'which ton', id: 'some.input', given: typed.slice(2) }],
      });
    },
  );
});

describe('the limits of an input', () => {
  it.each([
    [{ least: '0' }, '0', '0'],
    [{ least: '0' }, '-0.000001', 'outside'],
    [{ most: '100' }, '100 %', '100'],
    [{ most: '100' }, '100.0000000000000000000000001 %', 'outside'],
    [{ above: '0' }, '0', 'outside'],
    [{ above: '0' }, '1e-30', `0.${'0'.repeat(29)}1`],
    [{ below: '100' }, '100', 'outside'],
    [{ below: '100' }, '99.99999999999999999999999999', '99.99999999999999999999999999'],
    [{ least: '0', most: '100' }, '1.01 1', 'outside'],
    [{}, '-1e9', '-1000000000'],
  ])('%o hold for %s: %s', (allowed, typed, expected) => {
    expect(read(typed, '%', allowed)).toBe(expected);
  });

  it('are told with what was given, in the unit of the input', () => {
    const entry = entryIn('%', { least: '0', most: '100' });

    expect(typedFigure(entry, '1.04 1')).toEqual({
      ok: false,
      problems: [
        {
          kind: 'outside',
          id: 'some.input',
          label: 'Some input',
          given: '104',
          unit: '%',
          allowed: { least: '0', most: '100' },
        },
      ],
    });
  });
});

describe('a figure as given in a case file', () => {
  it('brings its status and source with it', () => {
    const given = { value: '0.1', unit: 'MWh/bdt', status: 'measured', source: 'Meter 4' } as const;

    expect(givenFigure(entryIn('kWh/bdt'), given)).toEqual({
      ok: true,
      value: { value: '100', provenance: { status: 'measured', source: 'Meter 4' } },
    });
  });

  it('says that it has no source where it has none', () => {
    expect(givenFigure(entryIn('t/a'), { value: '1', unit: 't/a' })).toEqual({
      ok: true,
      value: { value: '1', provenance: { status: 'none', source: 'Given without a source' } },
    });
  });

  it.each([
    ['EUR/bdt', '1', 'wrong unit'],
    ['EUR/ton', '1', 'which ton'],
    ['EUR/t', '-1', 'outside'],
  ])('is refused in %s with %s: %s', (unit, value, kind) => {
    expect(givenFigure(entryIn('EUR/t', { least: '0' }), { value, unit })).toMatchObject({
      ok: false,
      problems: [{ kind }],
    });
  });
});

describe('exactness', () => {
  it('is kept for every number of up to 30 digits through kilo, percent and back', () => {
    const digits = fc
      .tuple(fc.bigInt({ min: -(10n ** 29n), max: 10n ** 29n }), fc.nat({ max: 20 }))
      .map(([whole, places]) => {
        const text = String(whole < 0n ? -whole : whole).padStart(places + 1, '0');
        const point = text.length - places;
        const fraction = places === 0 ? '' : `.${text.slice(point)}`;
        return `${whole < 0n ? '-' : ''}${text.slice(0, point)}${fraction}`;
      });
    const plain = (text: string) =>
      text
        .replace(/(\.\d*?)0+$/, '$1')
        .replace(/\.$/, '')
        .replace(/^-0$/, '0');
    fc.assert(
      fc.property(digits, (typed) => {
        for (const [there, back] of [
          ['MWh', 'kWh'],
          ['%', '1'],
        ] as const) {
          const turned = read(`${typed} ${there}`, back);
          expect(plain(read(`${turned} ${back}`, there))).toBe(plain(typed));
        }
        expect(read(typed, 'EUR')).toBe(typed);
      }),
      { numRuns: 200 },
    );
  });

  it('never turns text into a number that was not there', () => {
    fc.assert(
      fc.property(
        fc.array(fc.integer({ min: 1, max: 0xffff }), { maxLength: 12 }).map((units) => String.fromCharCode(...units)),
        (typed) => {
          const parts = splitTyped(typed);
          if (parts === null) expect(typed).not.toMatch(/^\s*[+-]?\d/);
          else expect(Number.isNaN(Number(parts.digits))).toBe(false);
        },
      ),
      { numRuns: 500 },
    );
  });
});
