import { normalCumulative } from './normal.ts';

/** A beta distribution on [0, 1]. Every PERT is one, with shapes of at least 1 that add up to six. */
export interface Beta {
  readonly first: number;
  readonly second: number;
  /** The complete beta function B(first, second). */
  readonly whole: number;
}

/** The beta distribution whose first shape is given, from 1 to 5, and whose second is six less that. */
export function betaOfSix(first: number): Beta {
  return { first, second: 6 - first, whole: wholeOfSix(Math.abs(first - 3)) };
}

/**
 * B(3 + t, 3 - t) for t from 0 to 2. With Gamma(3 + t) = (2 + t)(1 + t) t Gamma(t), Gamma(3 - t) = (2 - t)(1 - t) Gamma(1 - t),
 * Gamma(t) Gamma(1 - t) = pi/sin(pi t) and Gamma(6) = 120 this is (4 - t^2)(1 - t^2) pi t/sin(pi t)/120. The zeros of the sine at 1
 * and 2 meet those of the other factors, so each stretch takes the one beside it together. Source of the relations: NIST Digital
 * Library of Mathematical Functions, 5.5.1, 5.5.3 and 5.12.1.
 */
function wholeOfSix(t: number): number {
  if (t <= 0.5) return ((4 - t * t) * (1 - t * t) * overSine(t)) / 120;
  if (t <= 1.5) return ((4 - t * t) * (1 + t) * t * overSine(1 - t)) / 120;
  return ((2 + t) * (t * t - 1) * t * overSine(2 - t)) / 120;
}

/** pi s/sin(pi s). */
function overSine(s: number): number {
  return s === 0 ? 1 : (Math.PI * s) / Math.sin(Math.PI * s);
}

/** The same distribution seen from the other end. */
export function mirrored({ first, second, whole }: Beta): Beta {
  return { first: second, second: first, whole };
}

/** The density at x. */
export function betaDensity({ first, second, whole }: Beta, x: number): number {
  return Math.exp((first - 1) * Math.log(x) + (second - 1) * Math.log1p(-x)) / whole;
}

/** The share below x, the regularised incomplete beta function. Source: DLMF 8.17.22, from the end where it converges fast, and 8.17.4. */
export function betaCumulative(beta: Beta, x: number): number {
  if (x <= 0) return 0;
  if (x >= 1) return 1;
  const turn = (beta.first + 1) / (beta.first + beta.second + 2);
  return x <= turn ? fromEnd(beta, x, 1 - x) : 1 - fromEnd(mirrored(beta), 1 - x, x);
}

const smallest = 2 ** -1000;
const precision = 2 ** -53;
const mostTerms = 500;

/** DLMF 8.17.22 by Lentz's rule (Thompson and Barnett, Journal of Computational Physics 64, 1986, 490-509). `rest` is 1 - x. */
function fromEnd({ first, second, whole }: Beta, x: number, rest: number): number {
  const front = Math.exp(first * Math.log(x) + second * Math.log(rest)) / (first * whole);
  let fraction = 1;
  let above = 1;
  let below = 0;
  for (let term = 1; term <= mostTerms; term += 1) {
    const m = term >>> 1;
    const part =
      term % 2 === 0
        ? (m * (second - m) * x) / ((first + 2 * m - 1) * (first + 2 * m))
        : (-(first + m) * (first + second + m) * x) / ((first + 2 * m) * (first + 2 * m + 1));
    above = 1 + part / above || smallest;
    below = 1 / (1 + part * below || smallest);
    fraction *= above * below;
    if (Math.abs(above * below - 1) < precision) break;
  }
  return front / fraction;
}

const mostSteps = 100;
const closeEnough = 1e-9;

/**
 * The x below which the share lies that a normal score of at most 0 has below it: the lower half of the quantiles (take the other half
 * from the mirror). By Newton's rule on ln share over ln x. The density in ln x is log-concave for a second shape of at least 1, so its
 * integral is too (Prekopa 1973), and the steps rise to the root from any start below it; x^first/(first B) exceeds the share, so the x
 * where that reaches it is such a start.
 */
export function betaAtScore(beta: Beta, score: number): number {
  const share = normalCumulative(score);
  if (share === 0) return 0;
  let x = Math.exp(Math.log(share * beta.first * beta.whole) / beta.first);
  for (let step = 0; step < mostSteps; step += 1) {
    const reached = betaCumulative(beta, x);
    const move = (Math.log(share / reached) * reached) / (x * betaDensity(beta, x));
    x *= Math.exp(move);
    // The next step would be of the order of the square of this one.
    if (Math.abs(move) < closeEnough) break;
  }
  return x;
}
