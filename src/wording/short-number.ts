import { trueMinus } from './true-minus.ts';

/** Exact digits cut to a few that still tell the size: for sentences that name no region. */
export function shortNumber(digits: string, significant: number): string {
  return trueMinus(String(Number(Number(digits).toPrecision(significant))));
}
