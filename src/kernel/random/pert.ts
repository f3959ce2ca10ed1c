import { type Beta, betaAtScore, betaDensity, betaOfSix, mirrored } from './beta.ts';
import { certain, type Family } from './family.ts';
import { normalDensity } from './normal.ts';
import { demandRising, within } from './ranges.ts';
import { type Point, tabled } from './score-table.ts';

/**
 * The beta distribution on [low, high] with shapes 1 + 4 (mode - low)/(high - low) and 1 + 4 (high - mode)/(high - low), so that its mean
 * is (low + 4 mode + high)/6. The deviation is the beta's own; (high - low)/6 would hold only near the middle. Draws err by less than
 * 1e-11 of the width (the tests look for the worst).
 * Source: "pert: The (Modified) PERT Distribution", manual of the package mc2d, no date, details; mean: Malcolm, Roseboom, Clark and
 * Fazar, "Application of a technique for research and development program evaluation", Operations Research 7 (1959) 646-669 (from memory).
 */
export function pert(low: number, mode: number, high: number): Family {
  demandRising(low, mode, high);
  const width = high - low;
  if (width === 0) return certain(low);
  const first = 1 + (4 * (mode - low)) / width;
  return {
    sampler: () => {
      const beta = betaOfSix(first);
      const other = mirrored(beta);
      const share = tabled((score) => (score <= 0 ? lowerPoint(beta, score) : seenBack(lowerPoint(other, -score))));
      return (score) => within(low, low + width * share(score), high);
    },
    mean: () => low + (width + 4 * (mode - low)) / 6,
    // The variance of a beta is ab/((a + b)^2 (a + b + 1)), here ab/252.
    deviation: () => width * Math.sqrt((first * (6 - first)) / 252),
  };
}

/** The quantile at a score of at most 0. It rises by the two densities in proportion. */
function lowerPoint(beta: Beta, score: number): Point {
  const value = betaAtScore(beta, score);
  return { value, slope: normalDensity(score) / betaDensity(beta, value) };
}

/** Each half of the quantiles is seen from its own end, where it keeps its digits. */
function seenBack({ value, slope }: Point): Point {
  return { value: 1 - value, slope };
}
