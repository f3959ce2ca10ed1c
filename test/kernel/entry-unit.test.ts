import { describe, expect, it } from 'vitest';
import { Decimal } from '../../src/kernel/evaluate/decimal-settings.ts';
import { type SymbolWorth, entryFactor } from '../../src/kernel/units/entry-unit.ts';
import { parseUnit } from '../../src/kernel/units/unit.ts';

const worths = new Map<string, SymbolWorth>([
  ['MWh', { symbol: 'MWh', worth: '1000', of: 'kWh' }],
  ['%', { symbol: '%', worth: '0.01', of: '1' }],
  ['st', { symbol: 'st', worth: '0.90718474', of: 't' }],
]);

function factor(entered: string, wanted: string): string | null {
  return entryFactor(parseUnit(entered), parseUnit(wanted), worths);
}

describe('the factor between two units', () => {
  it.each([
    ['kWh', 'kWh', '1'],
    ['MWh', 'kWh', '1000'],
    ['kWh', 'MWh', '0.001'],
    ['EUR/MWh', 'EUR/kWh', '0.001'],
    ['MWh/st', 'MWh/st', '1'],
    ['%', '1', '0.01'],
    ['1', '%', '100'],
    ['%/a', '1/a', '0.01'],
    ['st^2', 't^2', '0.8229841524888676'],
  ])('from %s to %s is %s', (entered, wanted, expected) => {
    expect(factor(entered, wanted)).toBe(expected);
  });

  it.each([
    ['kWh', 'GJ'],
    ['kWh', 'EUR'],
    ['bdt', 'adt'],
    ['EUR/t', 'EUR/kWh'],
    ['MWh^2', 'kWh'],
    ['%', 'kWh'],
  ])('from %s to %s does not exist', (entered, wanted) => {
    expect(factor(entered, wanted)).toBeNull();
  });

  it('has more digits than the reckoning, so that what was divided away comes back whole', () => {
    // 0.90718474 EUR/st is 1 EUR/t, although 1/0.90718474 never ends.
    const perTonne = factor('EUR/st', 'EUR/t') ?? '';

    expect(perTonne.length).toBeGreaterThan(60);
    expect(new Decimal('0.90718474').times(perTonne).toString()).toBe('1');
    expect(new Decimal('45.359237').times(perTonne).toString()).toBe('50');
  });
});
