/** Coefficients of a polynomial in one unknown, lowest power first. Neither the first nor the last is nothing, and the largest lies in [1, 2). */
export type Polynomial = readonly number[];

/**
 * The polynomial with the same positive roots: powers of the unknown that divide all of it are taken out, empty highest powers dropped, and
 * all is scaled by one power of two, which loses no digit. Empty where every coefficient is nothing.
 */
export function trimmed(coefficients: readonly number[]): Polynomial {
  const first = coefficients.findIndex((each) => each !== 0);
  const last = coefficients.findLastIndex((each) => each !== 0);
  if (first < 0) return [];
  const kept = coefficients.slice(first, last + 1);
  const largest = Math.max(...kept.map(Math.abs));
  const exponent = Math.floor(Math.log2(largest));
  // In two steps, for the power itself may be beyond the range of numbers.
  const [half, rest] = [2 ** Math.trunc(-exponent / 2), 2 ** (-exponent - Math.trunc(-exponent / 2))];
  const scaled = kept.map((each) => each * half * rest);
  // What is smaller than the largest by all that a number can hold has become nothing and is trimmed once more.
  return scaled[0] === 0 || scaled.at(-1) === 0 ? trimmed(scaled) : scaled;
}

export function derivative(polynomial: Polynomial): Polynomial {
  return trimmed(polynomial.map((each, power) => each * power).slice(1));
}

/** How often neighbouring coefficients differ in sign, those that are nothing passed over. */
export function signChanges(coefficients: readonly number[]): number {
  const signs = coefficients.filter((each) => each !== 0).map(Math.sign);
  return signs.filter((sign, place) => place > 0 && sign !== signs[place - 1]).length;
}

/**
 * The polynomial at x > 0 and the sum of its terms without their signs, both divided by the highest power of x where x is above 1, so that
 * nothing overflows: the sign and the ratio of the two are what counts.
 */
export function valueAt(polynomial: Polynomial, x: number): { readonly value: number; readonly size: number } {
  let [value, size] = [0, 0];
  const last = polynomial.length - 1;
  const step = x > 1 ? 1 / x : x;
  for (let place = last; place >= 0; place -= 1) {
    const coefficient = polynomial[x > 1 ? last - place : place]!;
    value = value * step + coefficient;
    size = size * step + Math.abs(coefficient);
  }
  return { value, size };
}
