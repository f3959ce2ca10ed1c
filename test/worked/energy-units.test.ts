import { describe, expect, test } from 'vitest';
import { typedFigure } from '../support/typed-figure.ts';

function typed(unit: string, text: string): number {
  const found = typedFigure({ id: 'demand', label: 'Demand', unit, allowed: {} }, text);
  if (!found.ok) throw new Error(JSON.stringify(found.problems));
  return Number(found.value);
}

function refused(unit: string, text: string) {
  const found = typedFigure({ id: 'demand', label: 'Demand', unit, allowed: {} }, text);
  return found.ok ? [] : found.problems;
}

describe('horsepower-days', () => {
  // Source: exact unit factors, 1 hp = 0.745699872 kW, 1 short ton = 0.90718474 t: 17.896797 / 0.90718474 = 19.7278.
  test('per short ton are 19.7278 kWh per tonne', () => {
    expect(typed('kWh/bdt', '1 hpd/bdst').toFixed(4)).toBe('19.7278');
  });

  // Source: "Intensity of Refining", temap.com, undated, bracketed conversion line: 17.9 (printed beside "hpday/ton" in a garbled
  // equality; it is the figure per metric tonne).
  test('per metric tonne are 17.8968 kWh per tonne', () => {
    expect(typed('kWh/bdt', '1 hpd/bdt').toFixed(4)).toBe('17.8968');
    expect(typed('kWh/bdt', '1 hpd/bdt').toFixed(1)).toBe('17.9');
  });
});

describe('benchmarks of recycling areas in short tons and British thermal units', () => {
  // Source: B. A. Thorp, "Use best practices to drive energy out", Forum on Energy, Appleton 2006, benchmark table (columns assigned
  // by position): recycled linerboard 110 kWh and 0.8 MMBtu, recycled tissue 300 kWh and 1.8 MMBtu per short ton.
  test.each([
    { text: '110 kWh/st', unit: 'kWh/t', printed: '121.3' },
    { text: '300 kWh/st', unit: 'kWh/t', printed: '330.7' },
    { text: '0.8 MMBtu/st', unit: 'GJ/t', printed: '0.930' },
    { text: '1.8 MMBtu/st', unit: 'GJ/t', printed: '2.093' },
  ])('$text is $printed $unit', ({ text, unit, printed }) => {
    const digits = printed.split('.')[1]?.length ?? 0;

    expect(typed(unit, text).toFixed(digits)).toBe(printed);
  });
});

describe('energy', () => {
  // Source: decimal prefixes, and 1 MMBtu = 1.05505585 GJ (International Table Btu of 1055.05585 J).
  test.each([
    { text: '0.12 MWh/bdt', unit: 'kWh/bdt', expected: 120 },
    { text: '450 MJ/bdt', unit: 'GJ/bdt', expected: 0.45 },
    { text: '1 MMBtu/t', unit: 'GJ/t', expected: 1.05505585 },
    { text: '8 EUR/MMBtu', unit: 'EUR/GJ', expected: 8 / 1.05505585 },
    { text: '55 EUR/MWh', unit: 'EUR/kWh', expected: 0.055 },
  ])('reads $text as $expected $unit', ({ text, unit, expected }) => {
    expect(typed(unit, text)).toBeCloseTo(expected, 14);
  });

  // 1 kWh is 3.6 MJ, but a kWh of electricity and a GJ of heat are bought from different people at different prices.
  test.each([
    { given: 'GJ/bdt', wanted: 'kWh/bdt' },
    { given: 'MJ/bdt', wanted: 'kWh/bdt' },
    { given: 'kWh/bdt', wanted: 'GJ/bdt' },
    { given: 'kWh/adt', wanted: 'kWh/bdt' },
    { given: 'kWh/t', wanted: 'kWh/bdt' },
  ])('in $given is refused by name where $wanted is wanted', ({ given, wanted }) => {
    expect(refused(wanted, `0.36 ${given}`)).toEqual([
      { kind: 'wrong unit', id: 'demand', label: 'Demand', given, wanted },
    ]);
  });

  test('per "ton" is asked about, since a ton is 907, 1000 or 1016 kg', () => {
    expect(refused('kWh/t', '110 kWh/ton')).toEqual([{ kind: 'which ton', id: 'demand', given: 'kWh/ton' }]);
  });
});
