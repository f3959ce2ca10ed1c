import { certain, type Family } from './family.ts';
import { normalCumulative, normalQuantile } from './normal.ts';
import { demandRising, within } from './ranges.ts';

/**
 * Density rising in a straight line from low to the mode and falling to high. With F = (mode - low)/(high - low) and u the share below, the
 * quantity is low + sqrt(u (high - low)(mode - low)) up to F and high - sqrt((1 - u)(high - low)(high - mode)) above (standard result,
 * from memory; the integral of the density).
 */
export function triangular(low: number, mode: number, high: number): Family {
  demandRising(low, mode, high);
  if (low === high) return certain(low);
  const rise = (high - low) * (mode - low);
  const fall = (high - low) * (high - mode);
  const turn = turningScore(mode - low, high - mode);
  return {
    sampler: () => (score) =>
      score < turn
        ? within(low, low + Math.sqrt(rise * normalCumulative(score)), mode)
        : within(mode, high - Math.sqrt(fall * normalCumulative(-score)), high),
    mean: () => low + (mode - low + (high - low)) / 3,
    // (a2 + b2 + c2 - ab - ac - bc)/18, written by the two sides of the mode so that nothing cancels.
    deviation: () => Math.sqrt(((mode - low) ** 2 + (mode - low) * (high - mode) + (high - mode) ** 2) / 18),
  };
}

/** The score at the mode, from the smaller of the two shares. */
function turningScore(before: number, after: number): number {
  const width = before + after;
  return before <= after ? normalQuantile(before / width) : -normalQuantile(after / width);
}
