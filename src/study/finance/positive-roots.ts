import { type Polynomial, derivative, signChanges, trimmed, valueAt } from './polynomial.ts';

/**
 * All positive roots of a polynomial, ascending, each once. Coefficients stand lowest power first and are finite.
 *
 * Between neighbouring turning points a polynomial only rises or only falls, so it meets nothing there once or not at all, and the signs at
 * both ends say which. Turning points are the roots of the derivative, found in the same way; by Descartes' rule of signs there is nothing
 * to look for without a change of sign, and one root at one change. A turning point at which the polynomial is nothing is a double root. It
 * counts as nothing where it is smaller than what rounding can make of its terms: the share below of their sum without signs. Two roots
 * that lie so close that it stays below that between them are therefore one: two alone within about 1e-7 of their size, several within
 * more.
 *
 * Roots below 1e-300 and above 1e300 are not told from those bounds.
 */
export function positiveRoots(coefficients: readonly number[]): readonly number[] {
  const polynomial = trimmed(coefficients);
  const turning = turningPoints(polynomial);
  const sides = sidesOf(polynomial, turning);
  return [...crossings(polynomial, turning, sides), ...touches(turning, sides)].sort(ascending);
}

const ascending = (one: number, other: number): number => one - other;

function turningPoints(polynomial: Polynomial): readonly number[] {
  if (signChanges(polynomial) < 2) return [];
  const slope = derivative(polynomial);
  const bends = turningPoints(slope);
  const sides = sidesOf(slope, bends);
  const flat = bends.filter((_, place) => sides[place + 1] === 0);
  return [...crossings(slope, bends, sides), ...flat].sort(ascending);
}

/** Signs at the left end, the turning points and the right end; nothing counts as 0. Near x = 0 the lowest power rules, far out the highest. */
function sidesOf(polynomial: Polynomial, turning: readonly number[]): readonly number[] {
  return [
    Math.sign(polynomial[0] ?? 0),
    ...turning.map((at) => signAt(polynomial, at)),
    Math.sign(polynomial.at(-1) ?? 0),
  ];
}

/**
 * Horner's scheme of degree n errs by at most about 2 n units of rounding (2^-53) of the sum of the sizes (Higham, Accuracy and Stability
 * of Numerical Algorithms, section 5.1, from memory); the rest allows for coefficients that are themselves results of reckoning.
 */
function signAt(polynomial: Polynomial, at: number): number {
  const { value, size } = valueAt(polynomial, at);
  return Math.abs(value) <= 8 * polynomial.length * 2 ** -53 * size ? 0 : Math.sign(value);
}

/** Roots between neighbours of opposite sign. */
function crossings(polynomial: Polynomial, turning: readonly number[], sides: readonly number[]): readonly number[] {
  const ends = [1 / rootBound(polynomial.toReversed()), ...turning, rootBound(polynomial)];
  return ends
    .slice(1)
    .flatMap((right, place) =>
      sides[place]! * sides[place + 1]! < 0 ? [bisected(polynomial, ends[place]!, right, sides[place]!)] : [],
    );
}

/** Turning points at which it is nothing; neighbours with nothing between them are one root, in their middle. */
function touches(turning: readonly number[], sides: readonly number[]): readonly number[] {
  const runs: number[][] = [];
  turning.forEach((at, place) => {
    if (sides[place + 1] !== 0) return;
    if (place > 0 && sides[place] === 0) runs.at(-1)?.push(at);
    else runs.push([at]);
  });
  return runs.map((run) => (run[0]! + run.at(-1)!) / 2);
}

/**
 * A number that no root exceeds: twice Fujiwara's bound, 2 max |c(n-i)/c(n)|^(1/i) (from memory), within the range of numbers. The roots of
 * the polynomial turned around are the inverses of its own.
 */
function rootBound(polynomial: Polynomial): number {
  const highest = Math.log2(Math.abs(polynomial.at(-1) ?? 1));
  const powers = polynomial
    .slice(0, -1)
    .map((each, place) => (Math.log2(Math.abs(each)) - highest) / (polynomial.length - 1 - place));
  return 2 ** Math.min(2 + Math.max(...powers, -1020), 1022);
}

/** Narrows a change of sign to neighbouring numbers. */
function bisected(polynomial: Polynomial, low: number, high: number, lowSign: number): number {
  let [left, right] = [low, high];
  for (;;) {
    // By the geometric mean while the ends are far apart: they may be 1e-300 and 1e300, a thousand halvings from each other.
    const middle = right > 2 * left ? Math.sqrt(left) * Math.sqrt(right) : left + (right - left) / 2;
    if (!(middle > left && middle < right)) break;
    const { value } = valueAt(polynomial, middle);
    if (value === 0) return middle;
    if (value * lowSign > 0) left = middle;
    else right = middle;
  }
  return left;
}
