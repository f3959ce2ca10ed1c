import { boundedNormal } from './bounded-normal.ts';
import { discrete } from './discrete.ts';
import type { Family, Sampler } from './family.ts';
import { lognormal } from './lognormal.ts';
import { pert } from './pert.ts';
import { triangular } from './triangular.ts';
import { uniform } from './uniform.ts';

export type { Sampler } from './family.ts';

/**
 * What is known about an uncertain quantity, in the unit of the quantity. `normal` and `lognormal` are cut to [low, high], which may be
 * infinite; their mean and deviation are those of the quantity before the cut (for `lognormal` of the quantity, not of its logarithm).
 * Weights of `discrete` need not add up to one.
 */
export type Distribution =
  | { kind: 'uniform'; low: number; high: number }
  | { kind: 'triangular' | 'PERT'; low: number; mode: number; high: number }
  | { kind: 'normal'; mean: number; deviation: number; low: number; high: number }
  | { kind: 'lognormal'; mean: number; deviation: number; low: number; high: number }
  | { kind: 'discrete'; values: readonly { value: number; weight: number }[] };

/**
 * How to draw the quantity: a function of a normal score, so that correlated scores give correlated quantities. Fit to be called millions
 * of times. A RangeError tells of figures that make no distribution (low above high, a mode outside, a negative deviation, bounds that
 * hold no probability): whoever reads a case refuses those in words first.
 */
export function sampler(distribution: Distribution): Sampler {
  return familyOf(distribution).sampler();
}

/** The mean of the quantity as it is drawn, after any cut. Errors as for `sampler`, but for bounds that hold no probability. */
export function meanOf(distribution: Distribution): number {
  return familyOf(distribution).mean();
}

/** The standard deviation of the quantity as it is drawn, after any cut. Errors as for `meanOf`. */
export function deviationOf(distribution: Distribution): number {
  return familyOf(distribution).deviation();
}

function familyOf(distribution: Distribution): Family {
  switch (distribution.kind) {
    case 'uniform':
      return uniform(distribution.low, distribution.high);
    case 'triangular':
      return triangular(distribution.low, distribution.mode, distribution.high);
    case 'PERT':
      return pert(distribution.low, distribution.mode, distribution.high);
    case 'normal':
      return boundedNormal(distribution);
    case 'lognormal':
      return lognormal(distribution);
    case 'discrete':
      return discrete(distribution.values);
  }
}
