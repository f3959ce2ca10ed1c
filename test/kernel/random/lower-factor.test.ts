import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { checkedCorrelation, correlate, lowerFactor } from '../../../src/kernel/random/correlation.ts';
import { anyCorrelations } from './any-correlations.ts';

describe('the lower factor', () => {
  it('times itself turned over is the matrix', () => {
    fc.assert(
      fc.property(anyCorrelations, (given) => {
        const { matrix } = checkedCorrelation(given);
        const n = matrix.length;
        const factor = lowerFactor(matrix);
        matrix.forEach((row, i) =>
          row.forEach((entry, j) => {
            let product = 0;
            for (let k = 0; k < n; k += 1) product += factor[i * n + k]! * factor[j * n + k]!;
            expect(product).toBeCloseTo(entry, 6);
            if (j > i) expect(factor[i * n + j]).toBe(0);
          }),
        );
      }),
    );
  });

  it('does not exist where a correlation is impossible', () => {
    expect(() =>
      lowerFactor([
        [1, 0.9, 0.9],
        [0.9, 1, -0.9],
        [0.9, -0.9, 1],
      ]),
    ).toThrow(RangeError);
  });
});

describe('correlated scores', () => {
  // By hand: 0.6 x 2 + 0.8 x 3 = 3.6.
  it('are the factor times the scores from the offset on', () => {
    const factor = lowerFactor([
      [1, 0.6],
      [0.6, 1],
    ]);
    const out = new Float64Array(2);
    correlate(factor, 2, Float64Array.of(9, 9, 2, 3), 2, out);

    expect(out[0]).toBe(2);
    expect(out[1]).toBeCloseTo(3.6, 15);
  });

  it('may take the place of the independent ones', () => {
    const factor = lowerFactor([
      [1, 0.6, 0.1],
      [0.6, 1, 0.2],
      [0.1, 0.2, 1],
    ]);
    const scores = Float64Array.of(0.5, -1, 2);
    const apart = new Float64Array(3);
    correlate(factor, 3, scores, 0, apart);
    correlate(factor, 3, scores, 0, scores);

    expect(scores).toEqual(apart);
  });
});
