import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { Decimal } from 'decimal.js';
import { add, divide, exactNumber, multiply, plainDigits, subtract } from '../../../renderer/fields/exact-number.ts';

// Independent of the code under test: decimal.js at far more digits than are typed.
const Wide = Decimal.clone({ precision: 80, toExpNeg: -100, toExpPos: 100 });
const typed = fc
  .tuple(fc.integer({ min: 0, max: 999_999_999 }), fc.integer({ min: 0, max: 999_999 }))
  .map(([whole, fraction]) => `${whole}.${fraction}`);

describe('exact arithmetic', () => {
  it.each([
    ['adds', add, (left: Decimal, right: Decimal) => left.plus(right)],
    ['subtracts', subtract, (left: Decimal, right: Decimal) => left.minus(right)],
    ['multiplies', multiply, (left: Decimal, right: Decimal) => left.times(right)],
  ])('%s like decimal.js, to the last digit', (_name, operation, expected) => {
    fc.assert(
      fc.property(typed, typed, (left, right) => {
        const result = plainDigits(operation(exactNumber(left), exactNumber(right)));
        expect(new Wide(result).equals(expected(new Wide(left), new Wide(right)))).toBe(true);
      }),
    );
  });

  it('divides like decimal.js, cut after twenty places', () => {
    fc.assert(
      fc.property(typed, typed, (left, right) => {
        fc.pre(Number(right) !== 0);
        const result = divide(exactNumber(left), exactNumber(right));
        const expected = new Wide(left).dividedBy(right).toDecimalPlaces(20, Decimal.ROUND_DOWN);
        expect(result !== null && new Wide(plainDigits(result)).equals(expected)).toBe(true);
      }),
    );
  });
});
