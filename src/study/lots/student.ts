import { betaCumulative } from '../../kernel/random/beta.ts';

const steps = 80;
const reached = new Map<number, number>();

/**
 * Student's t that 95 % of all samples stay within, for so many degrees of freedom (a whole number from 1 on). P(|T| > t) is the
 * regularised incomplete beta function of f/(f + t^2) with the shapes f/2 and 1/2: Abramowitz and Stegun, Handbook of Mathematical
 * Functions, 1964, 26.7.1 and 26.5.27.
 */
export function studentWithin95(freedom: number): number {
  const known = reached.get(freedom);
  if (known !== undefined) return known;
  const beta = { first: freedom / 2, second: 0.5, whole: wholeBeside(freedom) };
  // t of one degree of freedom is 12.7, of endlessly many 1.96; halving 80 times leaves nothing of 15.
  let [low, high] = [1, 16];
  for (let step = 0; step < steps; step += 1) {
    const middle = (low + high) / 2;
    if (betaCumulative(beta, freedom / (freedom + middle * middle)) > 0.05) low = middle;
    else high = middle;
  }
  reached.set(freedom, low);
  return low;
}

/** B(f/2, 1/2), from B(1/2, 1/2) = pi or B(1, 1/2) = 2 by B(a + 1, 1/2) = B(a, 1/2) a/(a + 1/2). */
function wholeBeside(freedom: number): number {
  const odd = freedom % 2 === 1;
  let whole = odd ? Math.PI : 2;
  for (let a = odd ? 0.5 : 1; a < freedom / 2; a += 1) whole *= a / (a + 0.5);
  return whole;
}
