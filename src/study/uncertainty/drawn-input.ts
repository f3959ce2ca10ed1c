import type { GivenDistribution } from '../../case/what-if.ts';
import { type InputDeclaration, inForce } from '../../kernel/graph/input-declaration.ts';
import type { Distribution } from '../../kernel/random/distribution.ts';

/** An uncertain input as it is drawn; figures in its entry unit. */
export interface DrawnInput {
  readonly input: InputDeclaration;
  readonly distribution: Distribution;
  readonly drawn: 'once' | 'yearly';
  /** How much of a year's departure, in normal scores, is carried into the next. */
  readonly persistence: number;
}

/** Common practice, no source: prices keep about seven tenths of a year's departure in the next. */
const usualPersistence = 0.7;

/** How an input is drawn; null where it is fixed. Figures must have been found in order (uncertainty-problems.ts). */
export function drawnInput(input: InputDeclaration, given: GivenDistribution, currency: string): DrawnInput | null {
  const distribution = distributionOf(input, given);
  if (distribution === null) return null;
  return {
    input,
    distribution,
    drawn: given.drawn ?? (isPrice(input, currency) ? 'yearly' : 'once'),
    persistence: given.persistence === undefined ? usualPersistence : Number(given.persistence),
  };
}

/** Money per unit of something is a price, and moves from year to year; money as such, or for a year, is settled once. */
function isPrice({ entryUnit }: InputDeclaration, currency: string): boolean {
  return entryUnit.startsWith(`${currency}/`) && entryUnit !== `${currency}/a`;
}

function distributionOf(input: InputDeclaration, given: GivenDistribution): Distribution | null {
  const figure = Number(inForce(input) ?? NaN);
  const low = Number(given.low ?? NaN);
  const high = Number(given.high ?? NaN);
  switch (given.law) {
    case 'fixed':
      return null;
    case 'uniform':
      return { kind: 'uniform', low, high };
    case 'triangular':
    case 'PERT': {
      const mode = given.mode === undefined ? figure : Number(given.mode);
      return { kind: given.law, low: Math.min(low, mode), mode, high: Math.max(high, mode) };
    }
    case 'normal':
    case 'lognormal': {
      const mean = given.mean === undefined ? figure : Number(given.mean);
      // A price that somebody sets to nothing has no spread of this kind left.
      if (given.law === 'lognormal' && !(mean > 0)) return null;
      const least = Math.max(given.low === undefined ? -Infinity : low, leastOf(input));
      const most = Math.min(given.high === undefined ? Infinity : high, mostOf(input));
      const deviation = Number(given.deviation ?? NaN);
      return { kind: given.law, mean, deviation, low: Math.min(least, mean), high: Math.max(most, mean) };
    }
    case 'discrete':
      return {
        kind: 'discrete',
        values: (given.values ?? []).map(({ value, weight }) => ({ value: Number(value), weight: Number(weight) })),
      };
  }
}

// What can never be true of an input is never drawn: laws without ends of their own are cut there.
function leastOf({ allowed }: InputDeclaration): number {
  return Number(allowed.least ?? allowed.above ?? -Infinity);
}

function mostOf({ allowed }: InputDeclaration): number {
  return Number(allowed.most ?? allowed.below ?? Infinity);
}
