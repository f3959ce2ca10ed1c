import { jStat } from 'jstat';
import { describe, expect, test } from 'vitest';
import { readingOf } from '../../../src/study/lots/reading.ts';
import { studentWithin95 } from '../../../src/study/lots/student.ts';

describe("Student's t that 95 % of samples stay within", () => {
  // Table III of R. A. Fisher, Statistical Methods for Research Workers, 1925, column P = 0.05; from memory.
  test.each([
    [1, 12.706],
    [2, 4.303],
    [4, 2.776],
    [9, 2.262],
    [30, 2.042],
  ])('is, for %i degrees of freedom, %f', (freedom, expected) => {
    expect(studentWithin95(freedom)).toBeCloseTo(expected, 3);
  });

  // jStat 1.9.6, MIT licence: its own quantile of Student's distribution.
  test.each([1, 2, 3, 4, 5, 8, 13, 29, 60, 199, 500])('agrees with a statistics library for %i', (freedom) => {
    const theirs = jStat.studentt.inv(0.975, freedom);
    expect(Math.abs(studentWithin95(freedom) / theirs - 1)).toBeLessThan(1e-7);
  });
});

describe('the interval of a mean', () => {
  test.each([[[12.1, 13.4, 11.8, 14.0, 12.7]], [[9.5, 9.7]], [[10, 11, 10.5, 9.8, 12, 13.1, 8.9, 10.2]]])(
    'agrees with a statistics library for %j',
    (values) => {
      const [low, high] = jStat.tci(jStat.mean(values), 0.05, values);
      const { low: ours, high: top } = readingOf(values);

      expect(ours).toBeCloseTo(low, 7);
      expect(top).toBeCloseTo(high, 7);
    },
  );

  test('is not there for one reading, nor how many would halve it', () => {
    expect(readingOf([12])).toEqual({
      mean: 12,
      count: 1,
      deviation: null,
      low: null,
      high: null,
      toHalve: null,
      isGiven: true,
    });
  });

  test('stays within nothing and the whole', () => {
    expect(readingOf([0.1, 2]).low).toBe(0);
    expect(readingOf([99, 80]).high).toBe(100);
  });

  test('is halved by the number of further readings that is told, and not by one less', () => {
    const values = [12.1, 13.4, 11.8, 14.0, 12.7];
    const { deviation, toHalve, low, high } = readingOf(values);
    const width = (count: number): number => (2 * jStat.studentt.inv(0.975, count - 1) * deviation!) / Math.sqrt(count);

    expect(width(5 + toHalve!)).toBeLessThanOrEqual((high! - low!) / 2);
    expect(width(5 + toHalve! - 1)).toBeGreaterThan((high! - low!) / 2);
  });
});
