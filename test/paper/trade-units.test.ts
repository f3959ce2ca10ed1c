import { describe, expect, it } from 'vitest';
import { Decimal } from '../../src/kernel/evaluate/decimal-settings.ts';
import { parseUnit } from '../../src/kernel/units/unit.ts';
import { ambiguousSymbols, withTradeSymbols, worths } from '../../src/paper/trade-units.ts';

function worthOf(symbol: string): Decimal {
  return new Decimal(worths.get(symbol)?.worth ?? 'NaN');
}

// International yard and pound agreement, 1959: 1 lb = 0.45359237 kg, 1 ft = 0.3048 m, both exact. Standard gravity 9.80665 m/s2
// (3rd General Conference on Weights and Measures, 1901). International Table Btu: 1055.05585262 J. All from memory.
const pound = new Decimal('0.45359237');
const footPound = pound.times('9.80665').times('0.3048');

describe('what a unit is worth', () => {
  it('is 2,000 pounds for every short ton and 2,240 for every long one', () => {
    for (const symbol of ['st', 'bdst', 'adst', 'st-ar', 'wet-st', 'gst'])
      expect([symbol, worthOf(symbol).toString()]).toEqual([symbol, pound.times(2000).dividedBy(1000).toString()]);
    for (const symbol of ['bdlt', 'adlt', 'lt-ar'])
      expect([symbol, worthOf(symbol).toString()]).toEqual([symbol, pound.times(2240).dividedBy(1000).toString()]);
  });

  it('is a day of 550 foot-pounds a second for a horsepower day, to nine digits', () => {
    const kilowattHours = footPound.times(550).times(24).dividedBy(1000);

    expect(worthOf('hpd').dividedBy(kilowattHours).minus(1).abs().toNumber()).toBeLessThan(1e-9);
  });

  it('is a million International Table Btu for MMBtu, to nine digits', () => {
    const gigajoules = new Decimal('1055.05585262').times('1e6').dividedBy('1e9');

    expect(worthOf('MMBtu').dividedBy(gigajoules).minus(1).abs().toNumber()).toBeLessThan(1e-8);
  });

  it('is a power of ten for prefixes and the percent sign', () => {
    expect(
      Object.fromEntries(['%', 'MWh', 'MJ', 'g', 'l'].map((symbol) => [symbol, worthOf(symbol).toString()])),
    ).toEqual({
      '%': '0.01',
      MWh: '1000',
      MJ: '0.001',
      g: '0.001',
      l: '0.001',
    });
  });

  it('is told in symbols that are worth nothing else, so that one step suffices', () => {
    for (const { symbol, of } of worths.values()) {
      expect(parseUnit(symbol).exponents.get(symbol)).toBe(1);
      expect([symbol, of, worths.has(of)]).toEqual([symbol, of, false]);
    }
  });

  it('is 3.6 GJ for a megawatt-hour of heat, by definition', () => {
    expect(worths.get('MWh-heat')).toMatchObject({ worth: '3.6', of: 'GJ' });
    expect(worthOf('MWh-heat').dividedBy(worthOf('kWh-heat')).toString()).toBe('1000');
  });

  it('is unknown for a bare ton', () => {
    for (const symbol of ambiguousSymbols) expect(worths.has(symbol)).toBe(false);
  });

  it('keeps energy in kWh and heat in GJ, which never turn into one another', () => {
    expect(worths.get('MWh')?.of).toBe('kWh');
    expect(worths.get('hpd')?.of).toBe('kWh');
    expect(worths.get('MJ')?.of).toBe('GJ');
    expect(worths.get('MMBtu')?.of).toBe('GJ');
  });
});

describe('the spelling of a unit', () => {
  it.each([
    ['€/t', 'EUR/t'],
    ['£/wet t', 'GBP/wet-t'],
    ['EUR/wet tonne', 'EUR/wet-t'],
    ['EUR/tonne as received', 'EUR/t-ar'],
    ['EUR/tonnes', 'EUR/t'],
    ['kWh/gross t', 'kWh/gt'],
    ['t/y', 't/a'],
    ['t/yr', 't/a'],
    ['h/Year', 'h/a'],
    ['m³/t', 'm3/t'],
    ['kg CO2/GJ', 'kgCO2e/GJ'],
    ['kg CO2e/GJ', 'kgCO2e/GJ'],
    ['EUR/t CO2e', 'EUR/tCO2e'],
    ['EUR/kg COD', 'EUR/kgCOD'],
    ['°C', 'C'],
    ['', '1'],
    ['  ', '1'],
    [' EUR/kWh ', 'EUR/kWh'],
    ['bdt/t', 'bdt/t'],
    ['EUR/ton', 'EUR/ton'],
  ])('"%s" becomes "%s"', (written, symbols) => {
    expect(withTradeSymbols(written)).toBe(symbols);
  });

  it('in symbols stays as it is', () => {
    for (const unit of [
      'EUR/t-ar',
      'EUR/wet-t',
      'kWh/gt',
      'kgCO2e/kWh',
      'kgCO2e/t-km',
      'EUR/kgCOD',
      'm3/t',
      '1/a',
      '%',
    ])
      expect(withTradeSymbols(unit)).toBe(unit);
  });
});
