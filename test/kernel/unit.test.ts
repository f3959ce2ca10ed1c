import { describe, expect, it } from 'vitest';
import { dimensionless, divideUnits, multiplyUnits, parseUnit, unitOf } from '../../src/kernel/units/unit.ts';

describe('a unit', () => {
  it.each([
    ['EUR/kWh', 'EUR/kWh'],
    ['kg/bdt', 'kg/bdt'],
    ['t*h', 'h*t'],
    ['EUR*a/t', 'EUR*a/t'],
    ['EUR/t/a', 'EUR/a/t'],
    ['  EUR / wet-t ', 'EUR/wet-t'],
    ['1', '1'],
    ['1/a', '1/a'],
    ['/a', '1/a'],
    ['%', '%'],
    ['m^3', 'm^3'],
    ['m*m*m', 'm^3'],
    ['kg*m^2/s^3', 'kg*m^2/s^3'],
    ['m^-2', '1/m^2'],
    ['t/t', '1'],
    ['m^0', '1'],
    ['kWh/t*t', 'kWh'],
    ['µm', 'µm'],
    ['m3-wood/adt', 'm3-wood/adt'],
  ])('reads "%s" as %s', (text, canonical) => {
    expect(parseUnit(text).text).toBe(canonical);
  });

  it.each([
    ['EUR/kWh', 'EUR*kWh^-1'],
    ['t*h/a', 'h/a*t'],
    ['1', 'kg/kg'],
    ['m^2/m', 'm'],
  ])('is one object, whether written "%s" or "%s"', (one, other) => {
    expect(parseUnit(one)).toBe(parseUnit(other));
  });

  it('reads its own canonical text back as itself', () => {
    const unit = unitOf(
      new Map([
        ['t', -2],
        ['EUR', 1],
        ['a', -1],
        ['kg', 3],
      ]),
    );

    expect(unit.text).toBe('EUR*kg^3/a/t^2');
    expect(parseUnit(unit.text)).toBe(unit);
  });

  it.each([
    '',
    '   ',
    'EUR//kWh',
    'EUR/',
    '*t',
    't*',
    'EUR t',
    '2*t',
    'EUR/(t*a)',
    'm^',
    'm^x',
    'm^1.5',
    '-t',
    'm^100',
    '3',
    'kg CO2',
    '€',
    'EUR;kWh',
    '10',
  ])('refuses "%s"', (text) => {
    expect(() => parseUnit(text)).toThrow(/^Not a unit: "/);
  });

  it('refuses malformed text again when asked again', () => {
    expect(() => parseUnit('kg**t')).toThrow('Not a unit: "kg**t"');
    expect(() => parseUnit('kg**t')).toThrow('Not a unit: "kg**t"');
  });

  it('never takes two symbols for one another', () => {
    expect(parseUnit('kWh')).not.toBe(parseUnit('GJ'));
    expect(parseUnit('bdt')).not.toBe(parseUnit('adt'));
    expect(parseUnit('t')).not.toBe(parseUnit('T'));
  });

  it('is multiplied by adding powers', () => {
    expect(multiplyUnits(parseUnit('EUR/kWh'), parseUnit('kWh/t'))).toBe(parseUnit('EUR/t'));
    expect(multiplyUnits(parseUnit('t/a'), parseUnit('a/t'))).toBe(dimensionless);
    expect(multiplyUnits(dimensionless, parseUnit('t'))).toBe(parseUnit('t'));
    expect(multiplyUnits(parseUnit('m'), parseUnit('m^2'))).toBe(parseUnit('m^3'));
  });

  it('is divided by taking powers away', () => {
    expect(divideUnits(parseUnit('EUR/t'), parseUnit('a/t'))).toBe(parseUnit('EUR/a'));
    expect(divideUnits(parseUnit('bdt/t'), parseUnit('bdt/t'))).toBe(dimensionless);
    expect(divideUnits(dimensionless, parseUnit('a'))).toBe(parseUnit('1/a'));
  });

  it('keeps no symbol whose power came to nothing', () => {
    const unit = divideUnits(parseUnit('EUR/t'), parseUnit('EUR'));

    expect([...unit.exponents]).toEqual([['t', -1]]);
  });
});
