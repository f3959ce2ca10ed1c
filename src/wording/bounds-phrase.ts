import type { Bounds } from '../kernel/expression/operation.ts';
import { trueMinus } from './true-minus.ts';

/** What is allowed, in words: "0 to 100", "more than 0", "at least 0 and below 100". */
export function boundsPhrase({ least, most, above, below }: Bounds, unit = ''): string {
  const withUnit = (digits: string): string => (unit === '' ? trueMinus(digits) : `${trueMinus(digits)} ${unit}`);
  if (least !== undefined && most !== undefined) return `${trueMinus(least)} to ${withUnit(most)}`;
  const lower =
    least === undefined ? (above === undefined ? null : `more than ${withUnit(above)}`) : `at least ${withUnit(least)}`;
  const upper =
    most === undefined ? (below === undefined ? null : `below ${withUnit(below)}`) : `at most ${withUnit(most)}`;
  return [lower, upper].filter((part) => part !== null).join(' and ') || 'any number';
}
