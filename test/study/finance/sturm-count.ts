type Whole = readonly bigint[];

/**
 * How many different positive roots a polynomial with whole coefficients has, lowest power first, by Sturm's theorem in whole numbers without any
 * rounding: sign changes of its chain at 0 less those far out. Roots that are multiple count once.
 */
export function sturmCount(coefficients: readonly number[]): number {
  const chain: Whole[] = [];
  // Roots at nothing are not positive and are divided out.
  let one = stripped(coefficients.slice(coefficients.findIndex((each) => each !== 0)).map(BigInt));
  let other = stripped(one.slice(1).map((each, place) => each * BigInt(place + 1)));
  while (one.length > 0) {
    chain.push(one);
    [one, other] = [other, other.length === 0 ? [] : negativeRemainder(one, other)];
  }
  return changes(chain.map((each) => each[0]!)) - changes(chain.map((each) => each.at(-1)!));
}

function negativeRemainder(dividend: Whole, divisor: Whole): Whole {
  const lead = divisor.at(-1)!;
  let rest = dividend;
  while (rest.length >= divisor.length) {
    const [top, shift] = [rest.at(-1)!, rest.length - divisor.length];
    // Times the square of the leading coefficient, which is positive: signs stay and nothing is left over.
    rest = stripped(rest.map((each, power) => each * lead * lead - top * lead * (divisor[power - shift] ?? 0n)));
  }
  const common = rest.reduce(divisorOfBoth, 0n);
  return rest.map((each) => -each / common);
}

function divisorOfBoth(one: bigint, other: bigint): bigint {
  const positive = one < 0n ? -one : one;
  return other === 0n ? positive : divisorOfBoth(other, positive % other);
}

function stripped(polynomial: Whole): Whole {
  return polynomial.slice(0, polynomial.findLastIndex((each) => each !== 0n) + 1);
}

function changes(values: Whole): number {
  const signs = values.filter((each) => each !== 0n).map((each) => each > 0n);
  return signs.filter((sign, place) => place > 0 && sign !== signs[place - 1]).length;
}
