/**
 * Fisher: (1 + nominal) = (1 + real)(1 + inflation), all shares a year. Flows at constant prices take the real rate, flows in money of the
 * day the nominal one. No number (NaN) where prices would fall by 100 % or more. Source: corporate finance lecture slides, copy at
 * dybbs8.com, undated, slides 620 and 621.
 */
export function realRate(nominal: number, inflation: number): number {
  // Not (1 + nominal)/(1 + inflation) - 1, which loses the digits of small rates.
  return inflation > -1 ? (nominal - inflation) / (1 + inflation) : NaN;
}
