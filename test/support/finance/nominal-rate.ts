/** The same turned round: real rate and inflation give the nominal rate. */
export function nominalRate(real: number, inflation: number): number {
  return inflation > -1 ? real + inflation + real * inflation : NaN;
}
