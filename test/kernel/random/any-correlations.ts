import fc from 'fast-check';

/** Symmetric with ones on the diagonal; possible only by chance. */
export const anyCorrelations = fc
  .integer({ min: 1, max: 6 })
  .chain((n) =>
    fc
      .array(fc.double({ min: -1, max: 1, noNaN: true }), { minLength: n * n, maxLength: n * n })
      .map((entries) =>
        Array.from({ length: n }, (_, i) =>
          Array.from({ length: n }, (__, j) => (i === j ? 1 : entries[Math.max(i, j) * n + Math.min(i, j)]!)),
        ),
      ),
  );
