import { describe, expect, it } from 'vitest';
import { NumberStyle } from '../../../renderer/numbers/number-style.ts';

const british = new NumberStyle('en-GB', 'EUR');
const german = new NumberStyle('de-DE', 'EUR');

describe('the way numbers are written', () => {
  it('keeps the zeros at the end of a figure', () => {
    expect(british.digits('13.10')).toBe('13.10');
    expect(british.digits('0.00')).toBe('0.00');
  });

  it('writes separators as the region does', () => {
    expect(british.digits('1042.85')).toBe('1,042.85');
    expect(german.digits('1042.85')).toBe('1.042,85');
  });

  it('writes a true minus, and a plus on differences only', () => {
    expect(british.difference('-139.92')).toBe('\u2212139.92');
    expect(british.difference('11.26')).toBe('+11.26');
    expect(british.digits('11.26')).toBe('11.26');
  });

  it('says nothing for a figure that is not there', () => {
    expect(british.digits('')).toBe('');
    expect(british.difference('')).toBe('');
  });

  it('leaves grouping out of what one types over, so that a comma in it can only be meant', () => {
    expect(british.typing('120000.5')).toBe('120000.5');
    expect(german.typing('120000.5')).toBe('120000,5');
  });

  it('writes the numbers of an equation for the region, and leaves names alone', () => {
    expect(german.equation('982.4927 \u2212 1,042.852')).toBe('982,4927 \u2212 1.042,852');
    expect(german.equation('CO2 × 1.5')).toBe('CO2 × 1,5');
  });

  it('writes money of a tonne or a year in cents, and other figures to six digits', () => {
    expect(british.result(119.4296845, 'EUR/t')).toBe('119.43');
    expect(british.result(0.12720321432, 'bdt/t')).toBe('0.127203');
  });

  it('knows the sign of a currency, and falls back to its code', () => {
    expect(british.symbol).toBe('€');
    expect(new NumberStyle('en-GB', 'GBP').symbol).toBe('£');
    expect(new NumberStyle('en-GB', 'XTS').symbol).toBe('XTS');
  });
});
