/** Mean and its standard error after so many trials. */
export interface Convergence {
  readonly trials: number;
  readonly mean: number;
  readonly standardError: number;
}

/** How the mean settles: after 100, 200, 500, 1000 ... trials and after all of them. */
export function convergenceOf(values: Float64Array): readonly Convergence[] {
  const stops = new Set<number>();
  for (let power = 100; power <= values.length; power *= 10) {
    for (const times of [1, 2, 5]) if (times * power < values.length) stops.add(times * power);
  }
  stops.add(values.length);
  const told: Convergence[] = [];
  // Running mean and sum of squared departures (Welford 1962, Technometrics 4, 419-420).
  let [mean, squares] = [0, 0];
  for (let trial = 1; trial <= values.length; trial += 1) {
    const value = values[trial - 1]!;
    const before = value - mean;
    mean += before / trial;
    squares += before * (value - mean);
    if (stops.has(trial)) told.push({ trials: trial, mean, standardError: Math.sqrt(squares / (trial - 1) / trial) });
  }
  return told;
}
