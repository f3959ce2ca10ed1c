import { dayText } from '../../src/index.ts';

/** The day it is where this machine stands. */
export function today(): string {
  const now = new Date();
  return dayText(now.getFullYear(), now.getMonth() + 1, now.getDate());
}
