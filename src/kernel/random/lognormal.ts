import { type Bounded, demandBounded } from './bounded-normal.ts';
import { boundedMoments } from './bounded-moments.ts';
import { boundedScore } from './bounded-score.ts';
import { certain, type Family } from './family.ts';
import { within } from './ranges.ts';

/**
 * A quantity whose logarithm is normal, cut to [low, high]. From the mean m and deviation d of the quantity: the logarithm has the
 * variance ln(1 + (d/m)^2) and the mean ln m less half of that (standard result, from memory; the tests solve it back).
 */
export function lognormal(bounded: Bounded): Family {
  demandBounded(bounded);
  const { mean, deviation, low, high } = bounded;
  if (!(mean > 0 && high > 0)) throw new RangeError(`A mean of ${mean} up to ${high} makes no lognormal distribution.`);
  if (low === high) return certain(low);
  if (deviation === 0) return certain(mean);
  const variance = Math.log1p((deviation / mean) ** 2);
  const spread = Math.sqrt(variance);
  const middle = Math.log(mean) - variance / 2;
  const from = low > 0 ? (Math.log(low) - middle) / spread : -Infinity;
  const to = (Math.log(high) - middle) / spread;
  const quantity = (score: number): number => Math.exp(middle + spread * score);
  const moments = () => boundedMoments(from, to, quantity, spread);
  const isWhole = from === -Infinity && to === Infinity;
  return {
    sampler: () => {
      const inside = boundedScore(from, to);
      return (score) => within(low, quantity(inside(score)), high);
    },
    mean: () => (isWhole ? mean : within(low, moments().mean, high)),
    deviation: () => (isWhole ? deviation : moments().deviation),
  };
}
