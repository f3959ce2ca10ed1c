import type { Bounds } from '../expression/operation.ts';

const float = new Float64Array(1);
const bits = new BigInt64Array(float.buffer);

/**
 * Limits as the least and the greatest number that keep them. A number above a limit is at least the next number after it, so that limits
 * which must not be reached become limits which may be. Null where nothing binds.
 */
export function closedLimits(bounds: Bounds): { least: number; most: number } | null {
  const least = Math.max(Number(bounds.least ?? -Infinity), nextAbove(Number(bounds.above ?? -Infinity)));
  const most = Math.min(Number(bounds.most ?? Infinity), -nextAbove(-Number(bounds.below ?? Infinity)));
  return least === -Infinity && most === Infinity ? null : { least, most };
}

/** The next greater floating-point number. The bits of positive numbers, read as whole numbers, rise with them; those of negative fall. */
function nextAbove(value: number): number {
  if (!Number.isFinite(value)) return value;
  if (value === 0) return Number.MIN_VALUE;
  float[0] = value;
  bits[0]! += value > 0 ? 1n : -1n;
  return float[0];
}
