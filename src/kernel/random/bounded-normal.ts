import { boundedMoments } from './bounded-moments.ts';
import { boundedScore } from './bounded-score.ts';
import { certain, type Family } from './family.ts';
import { within } from './ranges.ts';

/** Mean and deviation before the cut to [low, high]. */
export interface Bounded {
  readonly mean: number;
  readonly deviation: number;
  readonly low: number;
  readonly high: number;
}

/** A normal distribution cut to [low, high]: what lies outside is drawn again inside, not heaped at the bounds. */
export function boundedNormal(bounded: Bounded): Family {
  demandBounded(bounded);
  const { mean, deviation, low, high } = bounded;
  if (low === high) return certain(low);
  if (deviation === 0) return certain(mean);
  const from = (low - mean) / deviation;
  const to = (high - mean) / deviation;
  const moments = () => boundedMoments(from, to, (score) => score, 0);
  const isWhole = from === -Infinity && to === Infinity;
  return {
    sampler: () => {
      const inside = boundedScore(from, to);
      return (score) => within(low, mean + deviation * inside(score), high);
    },
    mean: () => (isWhole ? mean : within(low, mean + deviation * moments().mean, high)),
    deviation: () => (isWhole ? deviation : deviation * moments().deviation),
  };
}

/** Throws unless mean and deviation are figures and the bounds leave room. */
export function demandBounded({ mean, deviation, low, high }: Bounded): void {
  if (!Number.isFinite(mean) || !Number.isFinite(deviation) || deviation < 0)
    throw new RangeError(`A mean of ${mean} with a deviation of ${deviation} makes no distribution.`);
  if (!(low <= high && low < Infinity && high > -Infinity))
    throw new RangeError(`No value lies between ${low} and ${high}.`);
  if (deviation === 0 && !(low <= mean && mean <= high))
    throw new RangeError(`The one value ${mean} does not lie between ${low} and ${high}.`);
}
