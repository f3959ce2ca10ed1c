import { normalCumulative, normalDensity, normalQuantile } from './normal.ts';
import { tabled } from './score-table.ts';

/**
 * Turns a score of the whole normal distribution into the score that has the same share below it within [from, to] (either may be
 * infinite). Throws where the bounds hold no probability that a number can show, more than 37 deviations out.
 */
export function boundedScore(from: number, to: number): (score: number) => number {
  if (from === -Infinity && to === Infinity) return (score) => score;
  // The side with the smaller shares keeps its digits, so an interval mostly above the middle is worked out in the mirror.
  if (from + to > 0) {
    const mirrored = boundedScore(-to, -from);
    return (score) => -mirrored(-score);
  }
  const below = normalCumulative(from);
  const upTo = normalCumulative(to);
  const above = normalCumulative(-to);
  const share = upTo - below;
  if (!(share > 0)) throw new RangeError(`No probability lies between the scores ${from} and ${to}.`);
  const inside = (score: number): number => {
    if (score < 0) return normalQuantile(below + share * normalCumulative(score));
    const rest = share * normalCumulative(-score);
    return upTo - rest <= 0.5 ? normalQuantile(upTo - rest) : -normalQuantile(above + rest);
  };
  return tabled((score) => {
    const value = inside(score);
    // Equal shares: density x step inside is share x density x step outside.
    return { value, slope: (share * normalDensity(score)) / normalDensity(value) };
  });
}
