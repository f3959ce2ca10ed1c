/** A number that was found, as digits a case can keep: six that count, which is closer than money is shown, and no exponent. */
export function plainDigits(value: number): string {
  return value.toLocaleString('en', { useGrouping: false, maximumSignificantDigits: 6 });
}
