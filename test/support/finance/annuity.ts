/**
 * What 1 at the end of each of n years is worth at the start: (1 - (1 + r)^-n)/r in years, and n where the rate is nothing. The rate per
 * year is a share above -100 %, else no number (NaN). Source of the inverse: Annual Capital Recovery Factors, table 1.0, Engineers Edge,
 * undated.
 */
export function annuityFactor(rate: number, years: number): number {
  if (!(rate > -1)) return NaN;
  // By logarithms, so that digits survive where the rate is tiny.
  return rate === 0 ? years : -Math.expm1(-years * Math.log1p(rate)) / rate;
}

/** The yearly payment, at the end of each of n years, that returns 1 laid out at the start with interest, in 1/a; infinite for no years. */
export function capitalRecoveryFactor(rate: number, years: number): number {
  return 1 / annuityFactor(rate, years);
}
