import { nearestCorrelation } from './nearest-correlation.ts';

/** A correlation matrix that can be drawn from, and how it came from the one given. */
export interface CheckedCorrelation {
  readonly matrix: number[][];
  /** The matrix given was not possible, and another stands in its place. */
  readonly repaired: boolean;
  /** Largest change of an entry. */
  readonly moved: number;
}

// The remainder of a variance that counts as none. What goes with it is less than its root, for |covariance|^2 <= product of variances.
const nothing = 1e-12;
const littleCovariance = 1e-6;

/**
 * The matrix itself where it is possible (no negative eigenvalue; full correlation is allowed), else the nearest possible one, with its
 * smallest eigenvalue at 1e-10. Throws a RangeError where it is no square of shares from -1 to 1 with ones on the diagonal, alike on both
 * sides: whoever reads a case refuses that in words first.
 */
export function checkedCorrelation(matrix: readonly (readonly number[])[]): CheckedCorrelation {
  demandCorrelations(matrix);
  if (factorOf(matrix) !== null) return { matrix: matrix.map((row) => [...row]), repaired: false, moved: 0 };
  const nearest = nearestCorrelation(matrix);
  const changes = nearest.flatMap((row, i) => row.map((entry, j) => Math.abs(entry - matrix[i]![j]!)));
  return { matrix: nearest, repaired: true, moved: changes.reduce((most, change) => Math.max(most, change), 0) };
}

/**
 * The lower triangular factor L with L L' = matrix (Cholesky), n x n, row by row, zeros above the diagonal. An input that the ones before
 * it settle entirely has a zero on the diagonal. Throws a RangeError where the matrix has a negative eigenvalue.
 */
export function lowerFactor(matrix: readonly (readonly number[])[]): Float64Array {
  const factor = factorOf(matrix);
  if (factor === null) throw new RangeError('A correlation matrix with a negative eigenvalue has no factor.');
  return factor;
}

/**
 * Turns the independent scores `scores[offset]` .. `scores[offset + n - 1]` into correlated ones, `out[0]` .. `out[n - 1]`, by an n x n
 * lower factor. `out` may be the scores themselves where the offset is 0, for each row only needs what is not yet overwritten.
 */
export function correlate(
  factor: Float64Array,
  n: number,
  scores: Float64Array,
  offset: number,
  out: Float64Array,
): void {
  for (let row = n - 1; row >= 0; row -= 1) {
    let sum = 0;
    for (let column = 0; column <= row; column += 1) sum += factor[row * n + column]! * scores[offset + column]!;
    out[row] = sum;
  }
}

/** Cholesky column by column; null where the matrix has a negative eigenvalue. */
function factorOf(matrix: readonly (readonly number[])[]): Float64Array | null {
  const n = matrix.length;
  const factor = new Float64Array(n * n);
  const left = (row: number, column: number): number => {
    let rest = matrix[row]![column]!;
    for (let k = 0; k < column; k += 1) rest -= factor[row * n + k]! * factor[column * n + k]!;
    return rest;
  };
  for (let column = 0; column < n; column += 1) {
    const variance = left(column, column);
    if (variance < -nothing) return null;
    const isSettled = variance <= nothing;
    const deviation = isSettled ? 0 : Math.sqrt(variance);
    factor[column * n + column] = deviation;
    for (let row = column + 1; row < n; row += 1) {
      const covariance = left(row, column);
      if (isSettled && Math.abs(covariance) > littleCovariance) return null;
      factor[row * n + column] = isSettled ? 0 : covariance / deviation;
    }
  }
  return factor;
}

function demandCorrelations(matrix: readonly (readonly number[])[]): void {
  const isCorrelation = matrix.every(
    (row, i) =>
      row.length === matrix.length &&
      row.every((entry, j) => Math.abs(entry) <= 1 && entry === matrix[j]?.[i] && (i !== j || entry === 1)),
  );
  if (!isCorrelation) throw new RangeError('A correlation matrix is square and symmetric, with ones on its diagonal.');
}
