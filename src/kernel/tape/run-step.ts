import type { Bounds } from '../expression/operation.ts';
import { steps } from './tape.ts';

/** One step on plain numbers, to reckon fixed parts while a tape is compiled. The loops of `run.ts` and `blocked.ts` do the same. */
export function runStep(
  code: number,
  [a = NaN, b = NaN, above = NaN, otherwise = NaN]: readonly number[],
  bounds: Bounds,
): number {
  switch (code) {
    case steps.add:
      return a + b;
    case steps.subtract:
      return a - b;
    case steps.multiply:
      return a * b;
    case steps.divide:
      return quotient(a, b);
    case steps.power:
      return realPower(a, b);
    case steps.lesser:
      return Math.min(a, b);
    case steps.greater:
      return Math.max(a, b);
    case steps.whenAbove:
      return chosen(a, b, above, otherwise);
    default:
      return kept(
        a,
        Number(bounds.least ?? -Infinity),
        Number(bounds.most ?? Infinity),
        Number(bounds.above ?? -Infinity),
        Number(bounds.below ?? Infinity),
      );
  }
}

/** A division by nothing is no number, whatever is divided. */
export function quotient(a: number, b: number): number {
  return b === 0 ? NaN : a / b;
}

export function realPower(base: number, exponent: number): number {
  const result = Math.pow(base, exponent);
  return Number.isFinite(result) ? result : NaN;
}

/** Only the result taken can be no number. */
export function chosen(value: number, limit: number, above: number, otherwise: number): number {
  if (Number.isNaN(value) || Number.isNaN(limit)) return NaN;
  return value > limit ? above : otherwise;
}

/** The value within its limits, else no number. A limit that must not be reached and is infinite never binds. */
export function kept(value: number, least: number, most: number, above: number, below: number): number {
  return value >= least && value <= most && value > above && value < below ? value : NaN;
}
