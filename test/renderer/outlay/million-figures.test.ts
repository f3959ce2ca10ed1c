import { describe, expect, it } from 'vitest';
import { fromMillions, inMillions } from '../../../renderer/screens/outlay/million-figures.ts';

describe('money in slots of millions', () => {
  it.each([
    ['17500000', '17.50'],
    ['6400000', '6.40'],
    ['42000', '0.042'],
    ['1', '0.000001'],
    ['0', '0.00'],
    ['', ''],
  ])('shows %s as %s', (digits, shown) => {
    expect(inMillions(digits)).toBe(shown);
  });

  it.each([
    ['17.5', '17500000'],
    ['0.042', '42000'],
    ['3 million', '3000000'],
    ['3 m', '3000000'],
    ['3 m€', '3000000 €'],
    ['3 million EUR', '3000000 EUR'],
  ])('takes %s as %s', (typed, money) => {
    expect(fromMillions(typed)).toBe(money);
  });

  it('takes a figure with a unit for what it says: 17500000 EUR stays', () => {
    expect(fromMillions('17500000 EUR')).toBe('17500000 EUR');
  });

  it('does not take a unit that only begins with m for a million', () => {
    expect(fromMillions('3 months')).toBe('3 months');
  });

  it('loses no digit on the way there and back', () => {
    expect(fromMillions(inMillions('12345678.91'))).toBe('12345678.91');
  });
});
