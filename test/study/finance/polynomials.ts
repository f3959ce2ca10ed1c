/** Flows whose present value is nothing at exactly the given rates (each as often as it is named), times the given factor. */
export function flowsWithRates(rates: readonly number[], factor: readonly number[] = [1]): readonly number[] {
  return rates.reduce<readonly number[]>((flows, rate) => product(flows, [-1, 1 + rate]), factor);
}

export function product(one: readonly number[], other: readonly number[]): readonly number[] {
  const result = Array.from({ length: one.length + other.length - 1 }, () => 0);
  one.forEach((a, i) => {
    other.forEach((b, j) => {
      result[i + j] = result[i + j]! + a * b;
    });
  });
  return result;
}
