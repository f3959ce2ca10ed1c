import { describe, expect, it } from 'vitest';
import { readNumber } from '../../../renderer/fields/read-number.ts';

const number = (digits: string) => ({ kind: 'number', digits });

describe('a number as typed', () => {
  // What each text can only mean, whichever mark the person writes decimals with.
  it.each([
    ['472', '472'],
    ['472.00', '472.00'],
    ['12,5', '12.5'],
    ['.5', '0.5'],
    ['5.', '5'],
    ['0,125', '0.125'],
    ['1,234.5', '1234.5'],
    ['1.234,5', '1234.5'],
    ['1,234,567', '1234567'],
    ['1.234.567', '1234567'],
    ['120 000', '120000'],
    ["120'000.5", '120000.5'],
    ['12,3456', '12.3456'],
    ['1,23,456.5', '123456.5'],
  ])('%s is read as %s', (typed, digits) => {
    expect(readNumber(typed, '.')).toEqual(number(digits));
  });

  it.each([
    ['1,234', ',', '1.234'],
    ['1.234', '.', '1.234'],
  ])('%s is a decimal number to somebody who writes decimals with "%s"', (typed, mark, digits) => {
    expect(readNumber(typed, mark)).toEqual(number(digits));
  });

  it.each([
    ['1,234', '.'],
    ['1.234', ','],
  ])('%s can be either to somebody who writes decimals with "%s"', (typed, mark) => {
    expect(readNumber(typed, mark)).toEqual({ kind: 'either', decimal: '1.234', grouped: '1234' });
  });

  it.each(['', '.', ',', '12 5', '1,23,45', '1.23.456', '1.2.3', '1,234,56', '1.234.567,8,9', 'twelve', '12a'])(
    '"%s" is no number',
    (typed) => {
      expect(readNumber(typed, '.')).toEqual({ kind: 'unreadable' });
    },
  );
});
