import { EigenvalueDecomposition, Matrix } from 'ml-matrix';

const smallestEigenvalue = 1e-10;
const settled = 1e-13;
const mostRounds = 2000;

/**
 * The correlation matrix nearest to a symmetric one with a diagonal of ones (least sum of squared changes), by projecting in turn on the
 * matrices without negative eigenvalues and on those with a diagonal of ones, with Dykstra's correction. The answer then takes a trace of
 * the unit matrix, so that its smallest eigenvalue is 1e-10 and it has a factor. Where 2000 rounds do not settle it, it is still a
 * correlation matrix, if not quite the nearest.
 * Source: Higham, "Computing the nearest correlation matrix: a problem from finance", IMA Journal of Numerical Analysis 22 (2002)
 * 329-343, algorithm 3.3 with all weights alike.
 */
export function nearestCorrelation(matrix: readonly (readonly number[])[]): number[][] {
  // Inputs without correlations stay so: the nearest matrix of separate blocks is that of each block.
  const related = matrix.flatMap((row, i) => (row.some((entry, j) => i !== j && entry !== 0) ? [i] : []));
  const nearest = safelyPositive(projected(new Matrix(related.map((i) => related.map((j) => matrix[i]![j]!)))));
  const result = matrix.map((row) => [...row]);
  related.forEach((i, row) => related.forEach((j, column) => (result[i]![j] = nearest.get(row, column))));
  return result;
}

function projected(given: Matrix): Matrix {
  let current = given.clone();
  let correction = Matrix.zeros(given.rows, given.columns);
  for (let round = 0; round < mostRounds; round += 1) {
    const corrected = Matrix.sub(current, correction);
    const positive = withoutNegative(corrected);
    correction = Matrix.sub(positive, corrected);
    const next = unitDiagonal(positive);
    const change = Matrix.sub(next, current).norm('frobenius') / next.norm('frobenius');
    current = next;
    if (change <= settled) break;
  }
  return current;
}

/** The nearest matrix without negative eigenvalues: those it has are set to nothing. */
function withoutNegative(matrix: Matrix): Matrix {
  const { eigenvectorMatrix: vectors, realEigenvalues } = eigen(matrix);
  const scaled = vectors.clone().mulRowVector(realEigenvalues.map((value) => Math.max(0, value)));
  return symmetric(scaled.mmul(vectors.transpose()));
}

/** (X + c I)/(1 + c) keeps the diagonal at one and moves the smallest eigenvalue to where it is wanted. */
function safelyPositive(matrix: Matrix): Matrix {
  const lacking = smallestEigenvalue - Math.min(...eigen(matrix).realEigenvalues);
  return lacking <= 0 ? matrix : unitDiagonal(Matrix.div(matrix, 1 + lacking));
}

function eigen(matrix: Matrix): EigenvalueDecomposition {
  return new EigenvalueDecomposition(matrix, { assumeSymmetric: true });
}

function symmetric(matrix: Matrix): Matrix {
  return Matrix.add(matrix, matrix.transpose()).mul(0.5);
}

function unitDiagonal(matrix: Matrix): Matrix {
  const copy = matrix.clone();
  for (let place = 0; place < copy.rows; place += 1) copy.set(place, place, 1);
  return copy;
}
