import type { Bounds } from '../expression/operation.ts';
import { Decimal } from './decimal-settings.ts';

/** A limit read once: a comparison that must not hold. */
export type BoundTest = (value: Decimal) => boolean;

export function keepsBounds(digits: string, bounds: Bounds): boolean {
  const value = new Decimal(digits);
  return !boundTests(bounds).some((breaks) => breaks(value));
}

export function boundTests({ least, most, above, below }: Bounds): readonly BoundTest[] {
  const tests: BoundTest[] = [];
  const add = (limit: string | undefined, breaks: (value: Decimal, limit: Decimal) => boolean): void => {
    if (limit === undefined) return;
    const read = new Decimal(limit);
    tests.push((value) => breaks(value, read));
  };
  add(least, (value, limit) => value.lessThan(limit));
  add(most, (value, limit) => value.greaterThan(limit));
  add(above, (value, limit) => value.lessThanOrEqualTo(limit));
  add(below, (value, limit) => value.greaterThanOrEqualTo(limit));
  return tests;
}
