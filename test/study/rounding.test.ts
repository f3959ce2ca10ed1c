import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { Decimal } from '../../src/kernel/evaluate/decimal-settings.ts';
import { rounded, roundedParts, shifted, shownDifference } from '../../src/study/rounding.ts';

const seed = 20260;
const sumOf = (digits: readonly string[]): Decimal => Decimal.sum(0, ...digits);
const toCents = (value: Decimal): Decimal => value.toDecimalPlaces(2);

/** Money as the engine gives it: up to a hundred million with eight decimals, either sign. */
const money = fc
  .bigInt({ min: -(10n ** 16n), max: 10n ** 16n })
  .map((units) => new Decimal(String(units)).times('1e-8'));
const parts = fc.array(
  money.map((value) => value.toString()),
  { minLength: 1, maxLength: 30 },
);

describe('parts of a sum', () => {
  it.each([
    // Thirds: each is cut to 0.33, and the one cent that is missing from 1.00 goes to the first.
    { of: ['0.333333', '0.333333', '0.333334'], shown: ['0.33', '0.33', '0.34'] },
    { of: ['1.005', '1.005', '1.005', '1.005'], shown: ['1.01', '1.01', '1.00', '1.00'] },
    // -0.126 lies 0.004 above -0.13 and 0.126 lies 0.006 above 0.12: the cent goes to the second, and the sum is 0.
    { of: ['-0.126', '0.126'], shown: ['-0.13', '0.13'] },
    { of: ['-1.004', '-2.003', '-3.003'], shown: ['-1.01', '-2.00', '-3.00'] },
    { of: ['0', '0.004', '0.004'], shown: ['0.00', '0.01', '0.00'] },
    { of: ['2.50'], shown: ['2.50'] },
    { of: [], shown: [] },
  ])('of $of are shown as $shown', ({ of, shown }) => {
    expect(roundedParts(of, 2)).toEqual(shown);
  });

  it('add up to the rounded sum, and none is moved by a whole step', () => {
    const property = fc.property(parts, (exact) => {
      const shown = roundedParts(exact, 2);

      expect(sumOf(shown).toFixed(2)).toBe(toCents(sumOf(exact)).toFixed(2));
      for (const [place, digits] of shown.entries())
        expect(
          new Decimal(digits)
            .minus(exact[place] ?? '')
            .abs()
            .lessThan('0.01'),
          `${exact[place]} as ${digits}`,
        ).toBe(true);
    });
    fc.assert(property, { seed, numRuns: 400 });
  });

  it('leave no part worse off than one that was raised in its place', () => {
    const property = fc.property(parts, (exact) => {
      const shown = roundedParts(exact, 2);
      const cut = shown.map((digits, place) => new Decimal(exact[place] ?? '').minus(digits));
      const raised = cut.filter((lost) => lost.isNegative() && !lost.isZero()).map((lost) => lost.plus('0.01'));
      const left = cut.filter((lost) => !lost.isNegative());

      for (const one of raised) for (const other of left) expect(one.greaterThanOrEqualTo(other)).toBe(true);
    });
    fc.assert(property, { seed, numRuns: 200 });
  });

  it('add up to a whole that is given, even one that they do not make', () => {
    expect(roundedParts(['1.20', '3.40'], 2, '4.61')).toEqual(['1.21', '3.40']);
    expect(roundedParts(['1.201', '3.404'], 2, '4.58')).toEqual(['1.19', '3.39']);
    const property = fc.property(parts, money, (exact, whole) => {
      expect(sumOf(roundedParts(exact, 2, whole.toString())).toFixed(2)).toBe(toCents(whole).toFixed(2));
    });
    fc.assert(property, { seed, numRuns: 200 });
  });

  // Moving a step at a time would take a hundred thousand million steps here.
  it('takes no time over figures so large that 34 digits do not reach the cents', () => {
    const whole = '1.3333333333333333333333333333333334e43';
    const shown = roundedParts(['1e43', '3.3333333333333333333333333333333333e42', '0.01'], 2, whole);

    expect(sumOf(shown).dividedBy(whole).minus(1).abs().lessThan('1e-30')).toBe(true);
  });
});

describe('parts that face an equal figure', () => {
  // Two thirds of the cents of 10.00 are missing: 3.33 + 3.33 + 3.33.
  const thirds = ['3.3333', '3.3333', '3.3334'];

  it('take its cents, where others can carry the sum', () => {
    expect(roundedParts(thirds, 2)).toEqual(['3.33', '3.33', '3.34']);
    expect(roundedParts(thirds, 2, undefined, ['3.34', null, null])).toEqual(['3.34', '3.33', '3.33']);
    expect(roundedParts(thirds, 2, undefined, [null, '3.33', '3.33'])).toEqual(['3.34', '3.33', '3.33']);
  });

  it('give way where the sum forbids it, and as few of them as that takes', () => {
    expect(roundedParts(thirds, 2, undefined, ['3.33', '3.33', '3.33'])).toEqual(['3.33', '3.33', '3.34']);
    expect(roundedParts(thirds, 2, undefined, ['3.34', '3.34', null])).toEqual(['3.34', '3.33', '3.33']);
  });

  it('are not moved to a figure that is not one of theirs', () => {
    expect(roundedParts(thirds, 2, undefined, ['7.00', null, null])).toEqual(['3.33', '3.33', '3.34']);
  });

  it('are shown alike as often as any way of rounding could', () => {
    const small = fc.array(fc.integer({ min: -5000, max: 5000 }), { minLength: 2, maxLength: 7 });
    const property = fc.property(small, fc.infiniteStream(fc.boolean()), (thousandths, choice) => {
      const exact = thousandths.map((part) => new Decimal(part).dividedBy(1000).toString());
      const down = exact.map((part) => new Decimal(part).times(100).floor().dividedBy(100));
      const wanted = down.map((part, place) => {
        const isWhole = part.equals(exact[place] ?? '');
        return part.plus(choice.next().value === true && !isWhole ? '0.01' : 0).toFixed(2);
      });
      const shown = roundedParts(exact, 2, undefined, wanted);
      const alike = shown.filter((digits, place) => digits === wanted[place]).length;

      // Raising or lowering one part after the other is the least that brings the wished figures to the sum.
      const off = sumOf(wanted)
        .minus(toCents(sumOf(exact)))
        .times(100)
        .abs()
        .toNumber();
      expect(alike).toBe(exact.length - off);
    });
    fc.assert(property, { seed, numRuns: 300 });
  });
});

describe('single figures', () => {
  it('are rounded half to even', () => {
    expect(['0.125', '0.135', '-0.125', '2.5'].map((digits) => rounded(digits, 2))).toEqual([
      '0.12',
      '0.14',
      '-0.12',
      '2.50',
    ]);
  });

  it('have no minus when they round to nothing', () => {
    expect(rounded('-0.001', 2)).toBe('0.00');
    expect(shownDifference('1.20', '1.20', 2)).toBe('0.00');
  });

  it('differ by what a reader finds who takes one shown figure from the other', () => {
    expect(shownDifference('982.49', '1042.85', 2)).toBe('-60.36');
  });

  it('are moved by powers of ten without losing a digit', () => {
    expect(shifted('5794560.123456789012345678', -6)).toBe('5.794560123456789012345678');
  });
});
